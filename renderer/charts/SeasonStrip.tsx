import { useId } from 'react';
import type { StreamPicture } from '../../shared/contract/batches.ts';
import { dayOfIso, type IsoDay } from '../../shared/kernel/day.ts';
import { Textures } from './Textures.tsx';

const HEIGHT = 44;
const THICKEST = 26;
const THINNEST = 3;

export interface StripAxis {
  readonly from: IsoDay;
  readonly days: number;
}

/** Where a day begins on the axis, in per cent of its width. */
export const placeOf = ({ from, days }: StripAxis, day: IsoDay): number =>
  ((dayOfIso(day) - dayOfIso(from)) / days) * 100;

/** One batch on the axis of a season, its days under those of all others; the words beside it say the same. */
export function SeasonStrip({ stream, axis }: { stream: StreamPicture; axis: StripAxis }) {
  const id = useId().replaceAll(':', '');
  const most = Math.max(1, ...stream.bands.map((band) => band.alive ?? 0));
  return (
    <svg width="100%" height={HEIGHT} aria-hidden="true" style={{ display: 'block' }}>
      <Textures prefix={id} />
      {stream.bands.map((band) => {
        const thickness = Math.max(THINNEST, ((band.alive ?? most) / most) * THICKEST);
        const start = placeOf(axis, band.from);
        return (
          <rect
            key={band.stage}
            x={`${start}%`}
            y={(HEIGHT - thickness) / 2}
            width={`${placeOf(axis, band.to) - start}%`}
            height={thickness}
            fill={`url(#${id}-${band.stage})`}
            stroke="var(--rule)"
            strokeWidth="0.7"
            opacity={band.forecast ? 0.55 : 1}
          />
        );
      })}
      <line
        x1={`${placeOf(axis, stream.today)}%`}
        x2={`${placeOf(axis, stream.today)}%`}
        y2={HEIGHT}
        stroke="var(--ink)"
        strokeWidth="1.6"
      />
    </svg>
  );
}
