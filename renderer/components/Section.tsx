import { type ReactNode, useId } from 'react';

export function Section({
  title,
  acts,
  children,
  level = 2,
}: {
  title: ReactNode;
  acts?: ReactNode;
  children: ReactNode;
  level?: 2 | 3;
}) {
  const id = useId();
  const Heading = level === 2 ? 'h2' : 'h3';
  return (
    <section className="section" aria-labelledby={id}>
      <div className="section-head">
        <Heading id={id}>{title}</Heading>
        {acts ? <div className="acts">{acts}</div> : null}
      </div>
      {children}
    </section>
  );
}
