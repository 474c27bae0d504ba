import { Button } from '@mui/material';
import { type FormEvent, useState } from 'react';
import type { BatchFormOffer } from '../../../shared/contract/batches.ts';
import { BUILDER_TYPES, COMBS } from '../../../shared/model/method.ts';
import { parseDegrees } from '../../../shared/text/degrees.ts';
import { ask } from '../../client/client.ts';
import { useDraft } from '../../client/drafts.ts';
import { newId, useAnswer, useChange } from '../../client/hooks.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { DayField } from '../../components/DayField.tsx';
import { enterAdvances } from '../../components/enter-advances.ts';
import { FoundDraft } from '../../components/FoundDraft.tsx';
import { Page } from '../../components/Page.tsx';
import { goTo, useRoute } from '../../components/routes.ts';
import { Section } from '../../components/Section.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useDays, useTemperatureUnit, useToday, useWords } from '../../components/words.ts';
import { ClashesPreview } from './BatchClashes.tsx';
import {
  ANCHORS,
  type BatchForm,
  batchStart,
  chosenMethod,
  givenForm,
  hive,
  isNoNumber,
  methodChoices,
  startingForm,
} from './batch-form.ts';
import { StartDays } from './StartDays.tsx';
import { TimetablePreview } from './TimetablePreview.tsx';

/** One form of six fields, and beside it the days it gives. */
export function StartBatch() {
  const { batches: words } = useWords();
  const offer = useAnswer(['batch-form'], () => ask.batches.getBatchForm.query());
  return (
    <Page title={words.form.title} lead={<a href="#/batches">{words.title}</a>}>
      {offer.data ? <StartForm offer={offer.data} /> : null}
    </Page>
  );
}

const OWN_FIELDS = [
  'method',
  'comb',
  'newBreeder',
  'breederId',
  'newBuilder',
  'builderId',
  'anchorOn',
  'cellsPlanned',
  'larvaAgeHours',
  'sealedStageCelsius',
  'bars',
];

function StartForm({ offer }: { offer: BatchFormOffer }) {
  const { batches: words } = useWords();
  const today = useToday();
  const { query } = useRoute();
  const [blank] = useState(() => ({ ...startingForm(offer, today), ...givenForm(offer, query) }));
  const asked = query.toString();
  const {
    value: form,
    set: setForm,
    found,
    forget,
  } = useDraft(asked === '' ? 'new-batch' : `new-batch:${asked}`, blank);
  const unit = useTemperatureUnit();
  const [ids] = useState(() => ({ batch: newId(), breeder: newId(), builder: newId() }));
  const start = useChange(ask.batches.startBatch.mutate);
  const change = (changes: Partial<BatchForm>) => setForm((before) => ({ ...before, ...changes }));
  const input = batchStart(form, offer, ids, unit);
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (!input) return;
    const started = await start.run(input);
    if (!started) return;
    forget();
    goTo(`/batches/${started.batch.id}`);
  };
  return (
    <div className="columns">
      <form
        className="stack prints"
        onSubmit={(event) => void submit(event)}
        onKeyDown={(event) => {
          if (event.key === 'Enter' && (event.ctrlKey || event.metaKey)) void submit(event);
          else enterAdvances(event);
        }}
      >
        <MainFields form={form} change={change} offer={offer} problem={useProblemOf(start.state.refusal)} />
        <FoundDraft found={found} />
        <ChangeLines {...start.state} ownFields={OWN_FIELDS} />
        <div className="acts">
          <Button type="submit" variant="contained" disabled={start.state.busy || !input}>
            {words.form.submit}
          </Button>
        </div>
      </form>
      <div>
        <Lessons form={form} offer={offer} />
        {input ? <StartDays input={input} onTake={(day) => change({ day })} /> : null}
        {input ? <ClashesPreview input={input} /> : null}
        <Section title={words.form.timetable}>
          {input ? <TimetablePreview input={input} /> : <p className="soft">{words.form.noTimetable}</p>}
        </Section>
      </div>
    </div>
  );
}

/** As many as are read before a start. */
const LESSONS_SHOWN = 3;

/** What earlier batches by the same method taught, where it is of use. */
function Lessons({ form, offer }: { form: BatchForm; offer: BatchFormOffer }) {
  const { batches: words } = useWords();
  const lessons = offer.lessons.filter(({ method }) => method === form.method).slice(0, LESSONS_SHOWN);
  if (lessons.length === 0) return null;
  return (
    <Section title={words.form.lessons}>
      <dl className="facts">
        {lessons.map(({ batchId, batch, lesson }) => (
          <div key={batchId} style={{ display: 'contents' }}>
            <dt>
              <a href={`#/batches/${batchId}`}>{batch}</a>
            </dt>
            <dd>{lesson}</dd>
          </div>
        ))}
      </dl>
    </Section>
  );
}

interface FieldsProps {
  readonly form: BatchForm;
  readonly change: (changes: Partial<BatchForm>) => void;
  readonly offer: BatchFormOffer;
  readonly problem: (...fields: readonly string[]) => string | null;
}

function MainFields({ form, change, offer, problem }: FieldsProps) {
  const words = useWords();
  const { form: labels } = words.batches;
  const anchors = ANCHORS[form.method];
  return (
    <>
      <ChoiceField
        label={labels.method}
        value={form.methodCopyId ?? form.method}
        choices={methodChoices(offer, (method) => words.methods[method].name)}
        onChange={(value) => change(chosenMethod(offer, value))}
        firstFocus
        hint={words.methods[form.method].line}
        problem={problem('method')}
      />
      {form.method === 'cut-comb-edge' ? (
        <ChoiceField
          label={labels.comb}
          value={form.comb}
          choices={COMBS.map((comb) => ({ value: comb, text: words.combs[comb].name }))}
          onChange={(comb) => change({ comb })}
          hint={words.combs[form.comb].line}
          problem={problem('comb')}
        />
      ) : null}
      <HiveField
        label={labels.mother}
        value={form.mother}
        onChange={(mother) => change({ mother })}
        hives={offer.breeders}
        problem={problem('newBreeder', 'breederId')}
      />
      <BuilderField form={form} change={change} offer={offer} problem={problem} />
      {anchors.length > 1 ? (
        <ChoiceField
          label={labels.anchor}
          value={form.anchorStep}
          choices={anchors.map((step) => ({ value: step, text: words.stepTitles[step] }))}
          onChange={(anchorStep) => change({ anchorStep })}
        />
      ) : null}
      <DayField
        label={labels.day}
        value={form.day}
        onChange={(day) => change({ day })}
        problem={problem('anchorOn', 'anchorStep', 'anchor')}
      />
      <TextField
        label={labels.cells}
        value={form.cells}
        onChange={(cells) => change({ cells })}
        numeric
        hint={labels.cellsHint}
        problem={problem('cellsPlanned') ?? (isNoNumber(form.cells) ? words.number : null)}
      />
      <MoreFields form={form} change={change} offer={offer} problem={problem} />
    </>
  );
}

function BuilderField({ form, change, offer, problem }: FieldsProps) {
  const { batches: words } = useWords();
  const days = useDays();
  const { id } = hive(form.builder, offer.builders, '');
  const held = offer.builders.find((one) => one.id === id && one.freeFrom !== null);
  return (
    <HiveField
      label={words.form.builder}
      value={form.builder}
      onChange={(builder) => change({ builder })}
      hives={offer.builders}
      hint={held?.freeFrom ? words.form.heldBy(held.heldBy ?? '', days.short(held.freeFrom)) : undefined}
      problem={problem('newBuilder', 'builderId')}
    />
  );
}

interface HiveFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly hives: BatchFormOffer['breeders'];
  readonly hint?: string | undefined;
  readonly problem: string | null;
}

/** A hive by its code; a code that is not known yet is added with the batch. */
function HiveField({ label, value, onChange, hives, hint, problem }: HiveFieldProps) {
  const { batches: words } = useWords();
  const [listId] = useState(() => `hives-${newId()}`);
  const { id, fresh } = hive(value, hives, '');
  const known = hives.find((one) => one.id === id);
  const meant = known && known.code !== value.trim() ? [known.code, known.name].filter(Boolean).join(' ') : null;
  return (
    <div>
      <TextField
        label={label}
        value={value}
        onChange={onChange}
        list={listId}
        onBlur={() => known && onChange(known.code)}
        hint={hint ?? (fresh ? words.form.newHive(value.trim()) : (meant ?? words.form.hiveHint))}
        problem={problem}
      />
      <datalist id={listId}>
        {hives.map((one) => (
          <option key={one.id} value={one.code}>
            {one.name ?? ''}
          </option>
        ))}
      </datalist>
    </div>
  );
}

function MoreFields({ form, change, problem }: FieldsProps) {
  const words = useWords();
  const unit = useTemperatureUnit();
  const { form: labels } = words.batches;
  return (
    <details open={problem('larvaAgeHours', 'sealedStageCelsius') !== null || undefined}>
      <summary>{labels.more}</summary>
      <div className="stack">
        <ChoiceField
          label={labels.builderType}
          value={form.builderType}
          choices={BUILDER_TYPES.map((type) => ({ value: type, text: words.builderTypes[type].name }))}
          onChange={(builderType) => change({ builderType })}
        />
        <TextField
          label={labels.bars}
          value={form.bars}
          onChange={(bars) => change({ bars })}
          numeric
          problem={problem('bars')}
        />
        <fieldset>
          <legend>{labels.larvaAge}</legend>
          <div className="row">
            <TextField
              label={labels.larvaFrom}
              value={form.larvaFrom}
              onChange={(larvaFrom) => change({ larvaFrom })}
              numeric
              hint={labels.larvaUsual}
              problem={problem('larvaAgeHours')}
            />
            <TextField
              label={labels.larvaTo}
              value={form.larvaTo}
              onChange={(larvaTo) => change({ larvaTo })}
              numeric
            />
          </div>
        </fieldset>
        <TextField
          label={labels.celsius}
          value={form.celsius}
          onChange={(celsius) => change({ celsius })}
          hint={labels.celsiusHint}
          problem={
            problem('sealedStageCelsius') ??
            (form.celsius.trim() !== '' && parseDegrees(form.celsius, unit) === null
              ? words.batches.one.warmthUnclear
              : null)
          }
        />
        <label className="check">
          <input
            type="checkbox"
            checked={form.practice}
            onChange={(event) => change({ practice: event.target.checked })}
          />
          {labels.practice}
        </label>
      </div>
    </details>
  );
}
