import { LIGHT, STAGE_TONES } from '../theme/tokens.ts';

/** The stages keep their tones in both themes, so their textures do too. */
const { ink: INK, paper: PALE } = LIGHT;

/** The six textures of the stages and the hatch of hands off. Ids carry a prefix so that pictures do not share them. */
export function Textures({ prefix }: { prefix: string }) {
  const pattern = (stage: keyof typeof STAGE_TONES, size: number, lines: React.ReactNode) => (
    <pattern id={`${prefix}-${stage}`} width={size} height={size} patternUnits="userSpaceOnUse">
      <rect width={size} height={size} fill={STAGE_TONES[stage]} />
      {lines}
    </pattern>
  );
  return (
    <defs>
      {pattern('egg', 8, null)}
      {pattern('larva', 8, <circle cx="4" cy="4" r="1.1" fill={INK} />)}
      {pattern('sealed', 6, <path d="M3 0V6" stroke={INK} strokeWidth="0.8" />)}
      {pattern('ready', 8, <path d="M0 0L8 8M8 0L0 8" stroke={PALE} strokeWidth="0.9" />)}
      {pattern('virgin', 12, <path d="M0 6Q3 2 6 6T12 6" fill="none" stroke={INK} strokeWidth="0.9" />)}
      {pattern('laying', 8, null)}
      <pattern
        id={`${prefix}-hands-off`}
        width="9"
        height="9"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <path d="M0 0V9" stroke="var(--hands-off)" strokeWidth="2.4" />
      </pattern>
    </defs>
  );
}
