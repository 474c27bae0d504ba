import { Button } from '@mui/material';
import { type FormEvent, useEffect, useRef, useState } from 'react';
import type { BatchDetail } from '../../../shared/contract/batches.ts';
import { readBoxCodes, shortCodes } from '../../../shared/kernel/box-codes.ts';
import { ask } from '../../client/client.ts';
import { newId, useChange } from '../../client/hooks.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { DataTable } from '../../components/DataTable.tsx';
import { DayField } from '../../components/DayField.tsx';
import { Section } from '../../components/Section.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useDays, useToday, useWords } from '../../components/words.ts';

/** Which cell went into which box, and the form that puts them there. */
export function BatchBoxes({ batch, focus }: { batch: BatchDetail; focus: boolean }) {
  const words = useWords();
  const { one } = words.batches;
  const days = useDays();
  const sealed = batch.tally.sealed === null ? one.notCounted : String(batch.tally.sealed);
  return (
    <Section title={one.boxes}>
      {batch.placements.length === 0 ? (
        <p className="soft">{one.noBoxes(sealed, batch.freeBoxes.length)}</p>
      ) : (
        <>
          <DataTable
            caption={one.boxes}
            rows={batch.placements}
            rowKey={(row) => row.placementId}
            columns={[
              {
                key: 'box',
                title: one.boxColumns.box,
                cell: (row) => <a href={`#/boxes?box=${row.boxId}`}>{row.box}</a>,
                head: true,
              },
              { key: 'placed', title: one.boxColumns.placed, cell: (row) => days.short(row.placedOn) },
              {
                key: 'last',
                title: one.boxColumns.last,
                cell: (row) => lastText(row, words.looks, days.short, one.noLook),
              },
            ]}
          />
          <p className="soft small">
            {batch.labelsPrintedOn ? one.labelsPrinted(days.short(batch.labelsPrintedOn)) : one.labelsWaiting}
          </p>
        </>
      )}
      {batch.state === 'closed' ? null : <PlaceForm batch={batch} focus={focus} />}
    </Section>
  );
}

function lastText(
  row: BatchDetail['placements'][number],
  looks: ReturnType<typeof useWords>['looks'],
  short: (day: string) => string,
  none: string,
): string {
  if (!row.lastResult || !row.lastLookOn) return none;
  return `${looks[row.lastResult as keyof typeof looks].name}, ${short(row.lastLookOn)}`;
}

function PlaceForm({ batch, focus }: { batch: BatchDetail; focus: boolean }) {
  const { batches: words } = useWords();
  const today = useToday();
  const free = batch.freeBoxes;
  const [boxes, setBoxes] = useState('');
  const [day, setDay] = useState<string | null>(today);
  const [placed, setPlaced] = useState(0);
  const place = useChange(ask.boxes.placeCells.mutate);
  const problem = useProblemOf(place.state.refusal);
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (focus) field.current?.focus();
  }, [focus]);
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (day === null) return;
    const count = Math.max(1, readBoxCodes(boxes)?.length ?? 1);
    const ids = Array.from({ length: count }, newId);
    const answer = await place.run({ batchId: batch.id, boxes, ids, placedOn: day, barId: null });
    if (!answer) return;
    setPlaced(answer.boxes.length);
    setBoxes('');
  };
  return (
    <form className="stack" style={{ marginTop: 14 }} onSubmit={(event) => void submit(event)}>
      <SpreadLines spread={batch.spread} />
      <div className="row">
        <div style={{ flex: '1 1 200px' }}>
          <TextField
            label={words.one.placeBoxes}
            value={boxes}
            onChange={setBoxes}
            hint={[words.one.placeHint, free.length > 0 ? words.one.freeNow(shortCodes(free)) : null]
              .filter(Boolean)
              .join('. ')}
            problem={problem('boxes')}
            inputRef={field}
          />
        </div>
        <div style={{ flex: '1 1 180px' }}>
          <DayField label={words.one.placeDay} value={day} onChange={setDay} problem={problem('placedOn')} />
        </div>
      </div>
      <div className="acts">
        <Button type="submit" variant="outlined" disabled={place.state.busy || boxes.trim() === '' || day === null}>
          {words.one.placeCells}
        </Button>
        {place.state.done && placed > 0 ? (
          <span className="line-good" role="status">
            {words.one.placed(placed)}
          </span>
        ) : null}
      </div>
      <ChangeLines {...place.state} ownFields={['boxes', 'placedOn']} />
    </form>
  );
}

/** How many cells to keep in hand and, where boxes stand in more than one yard, where the cells of each mother are. */
function SpreadLines({ spread: { spare, mother, yards, allIn } }: { spread: BatchDetail['spread'] }) {
  const { one } = useWords().batches;
  return (
    <>
      {spare ? <p className="soft">{one.keepSpare(spare.from, spare.to)}</p> : null}
      {yards.length > 1 ? (
        <ul className="soft" aria-label={one.spread}>
          {yards.map(({ yard, freeBoxes, mothers }) => (
            <li key={yard}>
              {one.spreadYard(
                yard ?? one.noYard,
                freeBoxes,
                mothers.map((of) => one.spreadMother(of.mother ?? one.noMother, of.cells)).join(', '),
              )}
            </li>
          ))}
        </ul>
      ) : null}
      {allIn && mother ? <p className="line-notice">{one.allInOneYard(mother, allIn)}</p> : null}
    </>
  );
}
