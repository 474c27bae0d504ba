/** A closed hand: leave this alone. Always beside the words. */
export function HandsOffSign({ size = 20 }: { size?: number }) {
  return (
    <svg width={size} height={size} viewBox="0 0 20 20" aria-hidden="true" style={{ verticalAlign: '-4px' }}>
      <path
        d="M4 9.5c0-1 .8-1.6 1.6-1.4V6.6c0-1.6 2.2-1.6 2.3-.1 0-1.7 2.4-1.7 2.4 0 .1-1.6 2.4-1.5 2.4.1v.7c.2-1.3 2.3-1.2 2.3.3v4.2c0 3-1.9 5.2-5 5.2-2.700 0-4.100-1.200-5.000-3.400z"
        fill="none"
        stroke="currentColor"
        strokeWidth="1.5"
        strokeLinejoin="round"
      />
      <path
        d="M7.900 6.500v3M10.300 6.500v3M12.700 6.700v2.800"
        stroke="currentColor"
        strokeWidth="1.200"
        strokeLinecap="round"
      />
      <path d="M2.500 17.500 17.500 2.500" stroke="currentColor" strokeWidth="1.700" strokeLinecap="round" />
    </svg>
  );
}
