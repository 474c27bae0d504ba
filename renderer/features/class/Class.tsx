import { Button } from '@mui/material';
import { useState } from 'react';
import {
  BUILDER_TYPES,
  type BuilderType,
  COMBS,
  type Comb,
  METHODS,
  type Method,
} from '../../../shared/model/method.ts';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { DataTable } from '../../components/DataTable.tsx';
import { DayField } from '../../components/DayField.tsx';
import { Page } from '../../components/Page.tsx';
import { Section } from '../../components/Section.tsx';
import { useDays, useSentences, useToday, useWords } from '../../components/words.ts';
import { GlossaryPaper } from './GlossaryPaper.tsx';
import { Handout } from './Handout.tsx';
import { PracticeWorkbook } from './PracticeWorkbook.tsx';
import { SmallNumbers } from './SmallNumbers.tsx';

/** The timetable of any method for a made-up day, with what, why and caution: for the class and the wall. */
export function Class() {
  const words = useWords();
  const { classroom } = words;
  const [method, setMethod] = useState<Method>('cut-comb-edge');
  const [comb, setComb] = useState<Comb>('drawn');
  const [builderType, setBuilderType] = useState<BuilderType>('queenless');
  const [day, setDay] = useState<string | null>(useToday());
  const state = useAnswer(['workbook'], () => ask.workbook.getWorkbookState.query());
  const isPractice = state.data?.open?.kind === 'practice';
  return (
    <Page
      title={classroom.title}
      acts={
        <Button variant="outlined" onClick={() => window.print()}>
          {classroom.print}
        </Button>
      }
    >
      {isPractice ? <PracticeWorkbook isOpen /> : null}
      <p style={{ marginBottom: 18 }}>{classroom.line}</p>
      <div className="row acts" style={{ marginBottom: 22 }}>
        <ChoiceField
          label={classroom.method}
          value={method}
          choices={METHODS.map((value) => ({ value, text: words.methods[value].name }))}
          onChange={setMethod}
        />
        {method === 'cut-comb-edge' ? (
          <ChoiceField
            label={classroom.comb}
            value={comb}
            choices={COMBS.map((value) => ({ value, text: words.combs[value].name }))}
            onChange={setComb}
          />
        ) : null}
        <ChoiceField
          label={classroom.builderType}
          value={builderType}
          choices={BUILDER_TYPES.map((value) => ({ value, text: words.builderTypes[value].name }))}
          onChange={setBuilderType}
        />
        <DayField label={classroom.day} value={day} onChange={setDay} />
      </div>
      {day ? <ClassTimetable method={method} comb={comb} builderType={builderType} day={day} /> : null}
      {state.data && !isPractice ? <PracticeWorkbook isOpen={false} /> : null}
      <GlossaryPaper />
      <SmallNumbers />
    </Page>
  );
}

/** Cells the bees began by themselves have no larvae given; their calendar hangs on another step. */
const ANCHOR: Partial<Record<Method, 'remove-queen' | 'sealed'>> = {
  'emergency-cells': 'remove-queen',
  'swarm-cells': 'sealed',
  'supersedure-cells': 'sealed',
};

function ClassTimetable({
  method,
  comb,
  builderType,
  day,
}: {
  method: Method;
  comb: Comb;
  builderType: BuilderType;
  day: string;
}) {
  const say = useSentences();
  const words = useWords();
  const days = useDays();
  const { columns } = words.classroom;
  const input = {
    method,
    methodCopyId: null,
    comb: method === 'cut-comb-edge' ? comb : null,
    builderType,
    breederId: null,
    builderId: null,
    anchorStep: ANCHOR[method] ?? 'give-larvae',
    anchorOn: day,
    larvaAgeFromHours: null,
    larvaAgeToHours: null,
    sealedCelsius: null,
    cellsPlanned: null,
  } as const;
  const preview = useAnswer(['class', JSON.stringify(input)], () => ask.batches.previewBatch.query(input));
  if (!preview.data) return null;
  if (!preview.data.ok) return <p className="line-problem">{say.refusal(preview.data.refusal)}</p>;
  const { lines } = preview.data.value;
  const told = (step: (typeof lines)[number]['step']) => say.stepWords(step, method, builderType);
  return (
    <Section title={words.methods[method].name}>
      <Handout chosen={{ method, comb: input.comb, builderType, anchorStep: input.anchorStep, anchorOn: day }} />
      <p style={{ marginBottom: 12 }}>{words.methods[method].line}</p>
      <DataTable
        caption={words.methods[method].name}
        rows={lines}
        rowKey={(line) => line.step}
        columns={[
          {
            key: 'day',
            title: columns.day,
            cell: (line) => <span className="nowrap">{days.short(line.expected)}</span>,
          },
          { key: 'n', title: columns.n, numeric: true, cell: (line) => line.daysAfterLarvae },
          {
            key: 'step',
            title: columns.step,
            head: true,
            cell: (line) => (
              <span className={line.kind === 'hands-off' ? 'hands-off' : undefined}>{told(line.step).title}</span>
            ),
          },
          { key: 'what', title: columns.what, cell: (line) => told(line.step).what },
          { key: 'why', title: columns.why, cell: (line) => told(line.step).why },
          { key: 'caution', title: columns.caution, cell: (line) => told(line.step).caution },
        ]}
      />
      <h3 style={{ marginTop: 18 }}>{words.classroom.sources}</h3>
      <p className="soft small">
        {words.sources.told([...new Set(lines.flatMap((line) => line.source.split('; ')))].join('; '))}
      </p>
    </Section>
  );
}
