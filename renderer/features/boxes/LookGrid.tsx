import type { ReactNode } from 'react';
import type { LookRow, LookSheetView } from '../../../shared/contract/boxes.ts';
import { shortCodes } from '../../../shared/kernel/box-codes.ts';
import { EveningEnd } from '../../components/EveningEnd.tsx';
import { Room } from '../../components/RowSheet.tsx';
import { useDays, useWords } from '../../components/words.ts';
import { GridRow } from './GridRow.tsx';
import { Legend } from './Legend.tsx';
import { untouchedRows } from './look-grid-state.ts';
import type { useLookTyping } from './look-typing.ts';
import { fieldId } from './typed-fields.ts';
import { useLookGrid } from './use-look-grid.ts';

/** The grid itself. Keys act only while it has the focus; each look is saved as it is typed. */
export function LookGrid({
  view,
  askedAt,
  sheetDay,
}: {
  view: LookSheetView;
  /** When the view was asked for last; it may be asked for anew and be the same. */
  askedAt: number;
  sheetDay: string;
}) {
  const { boxes, looks } = useWords();
  const { sheet } = boxes;
  const use = useLookGrid(view, askedAt, sheetDay);
  const { rows, state, finished, changes, typing, code, grid, long, onKeyDown } = use;
  const done = rows.filter((row) => row.typed).length;
  return (
    <>
      <Progress typing={typing} done={done} all={rows.length} />
      <div className="table-scroll">
        <table
          className="look-grid"
          // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: one key a cell is a grid by the ARIA authoring practices
          role="grid"
          aria-label={sheet.grid}
          aria-rowcount={rows.length + 1}
          ref={grid}
          onKeyDown={onKeyDown}
        >
          <Head />
          <Room height={long.before} />
          {long.drawn.map((index) => (
            <TypedRow key={rows[index]?.id ?? index} index={index} use={use} />
          ))}
          <Room height={long.after} />
        </table>
      </div>
      {finished ? <End rows={rows} changes={changes} /> : null}
      <Legend
        asking={
          state.filling
            ? sheet.fillAsk(untouchedRows(rows.map(typing.asTyped)).length, looks[state.filling].name)
            : null
        }
        typing={code.typing}
        noSuchCode={code.noSuchCode}
      />
    </>
  );
}

type GridUse = ReturnType<typeof useLookGrid>;

function TypedRow({ index, use }: { index: number; use: GridUse }) {
  const { rows, state, number, drafts, typing, act, giveNumber, long } = use;
  const row = rows[index];
  if (!row) return null;
  return (
    <GridRow
      row={typing.asTyped(row)}
      index={index}
      measure={long.measure}
      current={index === state.current}
      numbering={index === state.current && state.numbering ? number : null}
      said={typing.said.get(row.id)}
      state={typing.stateOf(row)}
      onPick={() => act({ kind: 'go', to: index })}
      onNumber={(typedNumber) => giveNumber(row, typedNumber)}
      onLeave={() => {
        drafts.keep(fieldId(row.id, 'number'), null);
        act({ kind: 'leave' });
      }}
      drafts={drafts}
      onMore={(more) => void typing.save(row, more)}
    />
  );
}

function Progress({ typing, done, all }: { typing: ReturnType<typeof useLookTyping>; done: number; all: number }) {
  const { boxes, looks } = useWords();
  const { sheet } = boxes;
  const { lastSaved, toCheck } = typing;
  return (
    <p className="soft" aria-live="polite">
      {lastSaved ? sheet.saved(lastSaved.box, looks[lastSaved.result].name, done, all) : sheet.progress(done, all)}
      {toCheck > 0 ? `${lastSaved ? ' ' : ', '}${sheet.toCheck(toCheck)}${lastSaved ? '.' : ''}` : ''}
    </p>
  );
}

function Head() {
  const { columns } = useWords().boxes.sheet;
  return (
    <thead>
      <tr>
        {Object.entries(columns).map(([key, title]) => (
          <th key={key} scope="col">
            {title}
          </th>
        ))}
      </tr>
    </thead>
  );
}

function End({ rows, changes }: { rows: readonly LookRow[]; changes: ReturnType<typeof useLookGrid>['changes'] }) {
  const { boxes, looks } = useWords();
  const typed = rows.flatMap((row) => row.typed ?? []);
  const counts = [...Map.groupBy(typed, (look) => look.result)].map(
    ([result, of]) => `${of.length} ${looks[result].name}`,
  );
  return (
    <EveningEnd
      summary={boxes.sheet.summary(typed.length, counts.join(', '))}
      changes={changes}
      proposed={useProposed(rows)}
    />
  );
}

/** What could be done with the boxes just typed, one line a proposal; accepted on the board. */
function useProposed(rows: readonly LookRow[]): readonly ReactNode[] {
  const { proposals: words } = useWords().boxes;
  const days = useDays();
  const proposed = rows.flatMap((row) => (row.typed && row.proposal ? [{ ...row, proposal: row.proposal }] : []));
  const groups = Map.groupBy(proposed, ({ proposal, state }) =>
    [words.what(proposal.kind, state === 'proved'), words.on(days.short(proposal.on))].join(' '),
  );
  return [...groups].map(([what, boxes]) => (
    <a key={what} href="#/boxes">
      {shortCodes(boxes.map((box) => box.code))}: {what}
    </a>
  ));
}
