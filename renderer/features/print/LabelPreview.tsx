import type { LabelText } from '../../../shared/contract/print.ts';
import type { LabelSheet } from '../../../shared/model/label-sheet.ts';
import { labelWords } from '../../../shared/text/english/labels.ts';
import { useWords } from '../../components/words.ts';

const PIXELS_A_MILLIMETRE = 6;

/** A label in its true proportions; the PDF is what is printed. */
export function LabelPreview({
  label,
  sheet,
  pencilLine,
}: {
  label: LabelText;
  sheet: LabelSheet;
  pencilLine: boolean;
}) {
  const { print: words } = useWords();
  const size = { width: sheet.labelWidth * PIXELS_A_MILLIMETRE, minHeight: sheet.labelHeight * PIXELS_A_MILLIMETRE };
  return (
    <figure>
      <div
        style={{
          ...size,
          maxWidth: '100%',
          background: '#ffffff',
          color: '#000000',
          border: '1px solid var(--rule)',
          padding: 12,
          display: 'grid',
          gap: 4,
          alignContent: 'start',
        }}
      >
        <div style={{ display: 'flex', justifyContent: 'space-between', alignItems: 'baseline', gap: 12 }}>
          <strong style={{ fontSize: 52, lineHeight: 1 }}>{label.box}</strong>
          <span style={{ fontSize: 22 }}>
            {label.batch} <span style={{ fontSize: 17 }}>{label.yearColour}</span>
          </span>
        </div>
        <span style={{ fontSize: 22 }}>{label.mother}</span>
        <strong style={{ fontSize: 22, border: '2px solid #000', padding: '0 6px', justifySelf: 'start' }}>
          {labelWords.handsOff(label.handsOffUntil)}
        </strong>
        <span style={{ fontSize: 16 }}>{labelWords.looks(label.firstLookOn, label.sealedBroodLookOn)}</span>
        {pencilLine ? <span style={{ borderBottom: '1px solid #000', height: 22 }} /> : null}
      </div>
      <figcaption>{words.preview}</figcaption>
    </figure>
  );
}
