import type { LabelLook } from '../../../shared/contract/plain-labels.ts';
import type { LabelPicture } from '../../../shared/contract/print.ts';
import type { LabelSheet } from '../../../shared/model/label-sheet.ts';
import { useWords } from '../../components/words.ts';

const MILLIMETRES_A_POINT = 25.4 / 72;
const HATCH_STEP = 1.1;

/** A label as it will be printed, and what is to be known before. */
export function LabelPreview({ look, sheet }: { look: LabelLook | null; sheet: LabelSheet }) {
  const { plainLabels: words } = useWords();
  if (!look) return null;
  return (
    <>
      {look.picture ? <LabelFigure picture={look.picture} sheet={sheet} /> : null}
      {look.codeNeeds === null ? null : (
        <p className="line-problem" role="alert">
          {words.codeNeeds(look.codeNeeds)}
        </p>
      )}
      {look.unprintable.length > 0 ? (
        <div className="line-notice" role="status">
          {words.unprintable}
          <ul>
            {look.unprintable.map(({ label, letters }) => (
              <li key={label}>{words.unprintableOn(label, letters)}</li>
            ))}
          </ul>
        </div>
      ) : null}
    </>
  );
}

/** The same words at the same places as in the PDF, larger. */
function LabelFigure({ picture, sheet }: { picture: LabelPicture; sheet: LabelSheet }) {
  const { print: words } = useWords();
  const { texts, strip, pencilLine, qr, omitted } = picture;
  const { labelWidth, labelHeight } = sheet;
  return (
    <figure>
      <svg
        viewBox={`0 0 ${labelWidth} ${labelHeight}`}
        role="img"
        aria-label={`${words.preview}: ${texts.map(({ text }) => text).join(', ')}`}
        style={{ width: '100%', maxWidth: labelWidth * 6, background: '#ffffff', border: '1px solid var(--rule)' }}
      >
        {texts.map(({ text, bold, points, x, y, width }) => (
          <text
            key={`${text} ${y}`}
            x={x}
            y={y}
            fontSize={points * MILLIMETRES_A_POINT}
            fontWeight={bold ? 700 : 500}
            textLength={width}
            fill="#000000"
          >
            {text}
          </text>
        ))}
        {strip ? <Strip strip={strip} /> : null}
        {pencilLine ? (
          <path d={`M${pencilLine.x} ${pencilLine.y}h${pencilLine.width}`} stroke="#000000" strokeWidth={0.15} />
        ) : null}
        {qr ? <path d={modulesPath(qr)} fill="#000000" shapeRendering="crispEdges" /> : null}
      </svg>
      <figcaption>
        {words.preview}
        {omitted.length > 0 ? `. ${words.tooSmallFor(omitted)}` : ''}
      </figcaption>
    </figure>
  );
}

function Strip({ strip }: { strip: NonNullable<LabelPicture['strip']> }) {
  const { x, y, width, height, clearFrom, clearTo } = strip;
  const end = x + width;
  return (
    <g stroke="#000000" fill="none">
      <defs>
        <clipPath id="label-hatch">
          <path d={`M${x} ${y}H${clearFrom}v${height}H${x}zM${clearTo} ${y}H${end}v${height}H${clearTo}z`} />
        </clipPath>
      </defs>
      <path clipPath="url(#label-hatch)" d={slants(x, y, width, height)} strokeWidth={0.2} />
      <rect x={x} y={y} width={width} height={height} strokeWidth={0.3} />
    </g>
  );
}

function slants(x: number, y: number, width: number, height: number): string {
  const count = Math.ceil((width + height) / HATCH_STEP);
  return Array.from(
    { length: count },
    (_, n) => `M${x - height + n * HATCH_STEP} ${y + height}l${height} ${-height}`,
  ).join('');
}

function modulesPath({ x, y, module, rows }: NonNullable<LabelPicture['qr']>): string {
  return rows
    .flatMap((row, down) =>
      [...row].map((sign, across) =>
        sign === '1' ? `M${x + across * module} ${y + down * module}h${module}v${module}h${-module}z` : '',
      ),
    )
    .join('');
}
