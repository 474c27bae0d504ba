import {
  CartesianGrid,
  ErrorBar,
  ResponsiveContainer,
  Scatter,
  ScatterChart,
  usePlotArea,
  XAxis,
  YAxis,
} from 'recharts';
import { useAmount, useWords } from '../components/words.ts';
import type { CompareDot } from './compare-layout.ts';

const ROW = 58;

/** Dots with their ranges, one row a group; small marks below for the single batches. Black ink, told apart by place. */
export function CompareChart({
  dots,
  title,
  onChoose,
}: {
  dots: readonly CompareDot[];
  title: string;
  onChoose: (groupId: string) => void;
}) {
  const amount = useAmount();
  const { season } = useWords();
  const height = dots.length * ROW + 46;
  const points = dots.map((dot, index) => ({
    ...dot,
    y: dots.length - index,
    range: [dot.percent - dot.lower, dot.upper - dot.percent],
  }));
  return (
    <ResponsiveContainer width="100%" height={height}>
      <ScatterChart margin={{ top: 8, right: 150, bottom: 8, left: 8 }} title={title} accessibilityLayer={false}>
        <CartesianGrid horizontal={false} stroke="var(--faint-rule)" />
        <XAxis
          type="number"
          dataKey="percent"
          domain={[0, 100]}
          ticks={[0, 20, 40, 60, 80, 100]}
          unit=" %"
          stroke="var(--soft-ink)"
          fontSize={14}
        />
        <YAxis
          type="number"
          dataKey="y"
          domain={[0.5, dots.length + 0.5]}
          ticks={points.map((point) => point.y)}
          tickFormatter={(y: number) => points.find((point) => point.y === y)?.label ?? ''}
          width={150}
          stroke="var(--soft-ink)"
          fontSize={15}
          tickLine={false}
        />
        <BatchTicks dots={dots} />
        <Scatter
          data={points}
          isAnimationActive={false}
          shape={GroupDot}
          onClick={(_point, index) => {
            const chosen = points[index];
            if (chosen) onChoose(chosen.groupId);
          }}
        >
          <ErrorBar
            dataKey="range"
            direction="x"
            width={10}
            strokeWidth={2.4}
            stroke="var(--ink)"
            isAnimationActive={false}
          />
        </Scatter>
        {points.map((point) => (
          <text
            key={point.groupId}
            x="100%"
            dx={-6}
            y={13 + (dots.length - point.y + 0.5) * ((height - 46) / dots.length)}
            textAnchor="end"
            fontSize="13"
            fill="var(--soft-ink)"
          >
            {season.figure(amount(point.successes), amount(point.of))}, {season.batchesN(point.batches)}
          </text>
        ))}
      </ScatterChart>
    </ResponsiveContainer>
  );
}

interface Placed {
  readonly cx?: number;
  readonly cy?: number;
}

function GroupDot({ cx = 0, cy = 0 }: Placed) {
  return (
    <circle
      cx={cx}
      cy={cy}
      r={7}
      fill="var(--ink)"
      stroke="var(--paper)"
      strokeWidth={2}
      style={{ cursor: 'pointer' }}
    />
  );
}

/**
 * A tick for every batch below its group, taller for more cells. One path a group: twenty seasons have more than a thousand
 * batches, and as many elements of their own would hold up whoever types while the chart is drawn.
 */
function BatchTicks({ dots }: { dots: readonly CompareDot[] }) {
  const area = usePlotArea();
  if (!area) return null;
  const { x, y, width, height } = area;
  const row = height / dots.length;
  return dots.map(({ groupId, ticks }, index) => (
    <path
      key={groupId}
      d={ticks.map(({ percent, of }) => tickAt(x + (width * percent) / 100, y + row * (index + BELOW), of)).join('')}
      stroke="var(--rule)"
      strokeWidth={1.8}
    />
  ));
}

/** Where in its row a group's ticks lie: below its dot, which is in the middle. */
const BELOW = 0.78;

function tickAt(x: number, y: number, of: number): string {
  const half = Math.min(8, 2.5 + Math.sqrt(of));
  return `M${x.toFixed(1)} ${(y - half).toFixed(1)}v${(2 * half).toFixed(1)}`;
}
