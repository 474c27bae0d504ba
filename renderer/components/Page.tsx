import type { ReactNode } from 'react';

/** A page: its title as the one h1, its acts beside it. */
export function Page({
  title,
  lead,
  acts,
  children,
}: {
  title: ReactNode;
  lead?: ReactNode;
  acts?: ReactNode;
  children: ReactNode;
}) {
  return (
    <>
      <header className="page-head">
        <div>
          {lead ? <div className="soft small">{lead}</div> : null}
          <h1 tabIndex={-1}>{title}</h1>
        </div>
        {acts ? <div className="acts">{acts}</div> : null}
      </header>
      {children}
    </>
  );
}
