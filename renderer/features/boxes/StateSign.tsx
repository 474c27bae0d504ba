import type { BoxStateKind } from '../../../shared/contract/boxes.ts';

/** The state of a box by shape: the word always stands beside it. */
export function StateSign({ state }: { state: BoxStateKind }) {
  return (
    <svg
      width="20"
      height="20"
      viewBox="0 0 20 20"
      aria-hidden="true"
      style={{ color: state === 'failed' ? 'var(--bad)' : state === 'proved' ? 'var(--good)' : 'var(--ink)' }}
    >
      {SHAPES[state]}
    </svg>
  );
}

const ring = <circle cx="10" cy="10" r="7" fill="none" stroke="currentColor" strokeWidth="1.8" />;

const SHAPES: Readonly<Record<BoxStateKind, React.ReactNode>> = {
  free: ring,
  cell: (
    <>
      {ring}
      <path d="M10 3a7 7 0 0 1 0 14z" fill="currentColor" />
    </>
  ),
  virgin: <path d="M2 10q4-7 8 0t8 0" fill="none" stroke="currentColor" strokeWidth="2" />,
  laying: <circle cx="10" cy="10" r="7.5" fill="currentColor" />,
  proved: (
    <>
      <circle cx="10" cy="10" r="8.5" fill="none" stroke="currentColor" strokeWidth="1.6" />
      <circle cx="10" cy="10" r="5" fill="currentColor" />
    </>
  ),
  failed: <path d="M4 4l12 12M16 4L4 16" stroke="currentColor" strokeWidth="2.2" />,
  retired: <path d="M3 10h14" stroke="currentColor" strokeWidth="2" />,
};
