import type { RowProblem, WholeProblem } from '../contract/import.ts';
import type { Notice, Refusal } from '../contract/refusal.ts';
import type { Day, IsoDay } from '../kernel/day.ts';
import type { ProposalReason } from '../model/box-proposal.ts';
import type { ChangeWords, JournalStep } from '../model/journal.ts';
import type { BuilderType, Method } from '../model/method.ts';
import type { Step } from '../model/step.ts';
import type { CalendarRefusal } from '../model/timetable.ts';
import { type DateOrder, shortDay } from './day-text.ts';
import type { Words } from './english/english.ts';
import type { FirstWords } from './english/first-words.ts';
import type { StepWords } from './english/steps/step-words.ts';

/** Whole sentences from the words of a language: each function is handed the catalogue first. */

type DayText = (day: Day | IsoDay) => string;
type Said = ((facts: never, ...rest: never[]) => string) | undefined;

/** The words of a step for one method and one way of arranging the builder. */
export function stepWords(words: Words, step: Step, method: Method, builderType: BuilderType): StepWords {
  const { byMethod, byBuilder, what, why, caution } = words.steps[step];
  // Cells the bees began by themselves have no builder, so nothing is said about how it is arranged.
  const forBuilder = METHODS_WITHOUT_BUILDER.includes(method) ? undefined : byBuilder?.[builderType];
  return { title: words.stepTitles[step], what, why, caution, ...forBuilder, ...byMethod?.[method] };
}

const METHODS_WITHOUT_BUILDER: readonly Method[] = ['emergency-cells', 'swarm-cells', 'supersedure-cells'];

export const stepTitle = (words: Words, step: Step, method: Method, builderType: BuilderType): string =>
  stepWords(words, step, method, builderType).title;

export function refusalSentence(
  words: Words,
  refusal: Refusal,
  day: DayText,
  degrees?: (celsius: number) => string,
): string {
  const { refusals, calendarRefusal } = words.sentences;
  const sentence = (refusals as Readonly<Record<string, Said>>)[refusal.kind];
  return sentence
    ? sentence(refusal as never, day as never)
    : calendarRefusal(refusal as CalendarRefusal, day, degrees);
}

export const noticeSentence = (words: Words, notice: Notice, day: DayText): string =>
  (words.sentences.notices[notice.kind] as (notice: Notice, day: DayText) => string)(notice, day);

export const proposalReason = (words: Words, reason: ProposalReason<IsoDay>, day: (on: IsoDay) => string): string =>
  (words.sentences.proposals[reason.kind] as (reason: ProposalReason<IsoDay>, day: (on: IsoDay) => string) => string)(
    reason,
    day,
  );

export const rowProblemSentence = (words: Words, problem: RowProblem): string =>
  words.sentences.rowProblems[problem.kind](problem, words.importFields[problem.field]);

export const wholeProblemSentence = (words: Words, problem: WholeProblem): string =>
  `${words.tablesIn.tableRow(problem.table, problem.row)} ${words.sentences.wholeProblems[problem.kind](problem)}`;

/** A file that a later program wrote may hold kinds of change that this one has no words for. */
export function changeSentence({ sentences: { changes } }: FirstWords, change: ChangeWords): string {
  const sentence = changes[change.did] as ((words: ChangeWords) => string) | undefined;
  return sentence ? sentence(change) : changes.other({ did: 'other' });
}

/** A line of the history: an undo says what it took back. */
export function stepSentence(words: Words, { kind, words: change }: Pick<JournalStep, 'kind' | 'words'>): string {
  const said = changeSentence(words, change);
  if (kind === 'undo') return words.history.undoneLine(said);
  return kind === 'redo' ? words.history.doneAgainLine(said) : said;
}

export const rowName = ({ sentences: { rows } }: Words, table: string): string => rows[table]?.name ?? spelled(table);

export const fieldName = ({ sentences: { rows } }: Words, table: string, field: string): string =>
  rows[table]?.fields[field] ?? spelled(field);

/** A name of the file as plain words, where nobody has given it better ones. */
const spelled = (name: string): string => {
  const plain = name.replace(/_id$/, '').replaceAll('_', ' ');
  return plain.charAt(0).toUpperCase() + plain.slice(1);
};

type ListWords = Readonly<Record<string, string | { readonly name: string }>>;

/** Values that are kept as words of a list, by table and field, or by field alone. */
const listOf: Readonly<Record<string, (words: Words) => ListWords>> = {
  'box_look.result': ({ looks }) => looks,
  'observation.what': ({ sightings }) => sightings,
  method: ({ methods }) => methods,
  step: ({ stepTitles }) => stepTitles,
  anchor_step: ({ stepTitles }) => stepTitles,
  comb: ({ combs }) => combs,
  builder_type: ({ builderTypes }) => builderTypes,
  box_type: ({ boxTypes }) => boxTypes,
  end_reason: ({ boxes }) => boxes.ends,
  role: ({ hives }) => hives.roles,
  'queen.place': ({ queens }) => queens.places,
  'queen_move.place': ({ queens }) => queens.places,
  'queen_move.way': ({ queens }) => queens.move.ways,
  'queen_feedback.outcome': ({ queens }) => queens.feedback.outcomes,
  'stock_score.trait': ({ stock }) => stock.traits,
  'stock_test.kind': ({ stock }) => stock.tests,
  'feeding.feed': ({ feeding }) => feeding.feeds,
  'follow_up.what': ({ followUps }) => followUps.what,
  'follow_up.answer': ({ followUps }) => followUps.answered,
  'loss.stage': ({ losses }) => losses.stages,
  'loss.reason': ({ losses }) => losses.reasons,
  'batch.practice': ({ history }) => ({ 1: history.yes, 0: history.no }),
};

const ISO_DAY = /^\d{4}-\d{2}-\d{2}$/;

/** A stored value as it is said: words of lists, days in letters; nothing where nothing was known. */
export function fieldValue(
  words: Words,
  table: string,
  field: string,
  value: string | number | null,
  order: DateOrder,
): string {
  if (value === null) return words.history.nothing;
  const text = String(value);
  const list = listOf[`${table}.${field}`] ?? listOf[field];
  if (list) {
    const said = list(words)[text];
    if (said === undefined) return text;
    return typeof said === 'string' ? said : said.name;
  }
  if ((field.endsWith('_on') || field === 'moved_to') && ISO_DAY.test(text))
    return shortDay(text, order, words.language);
  return text;
}
