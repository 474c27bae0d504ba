import { createContext, use, useContext, useMemo } from 'react';
import type { Notice, Refusal } from '../../shared/contract/refusal.ts';
import type { Day, IsoDay, WeekStart } from '../../shared/kernel/day.ts';
import type { ProposalReason } from '../../shared/model/box-proposal.ts';
import type { ChangeWords } from '../../shared/model/journal.ts';
import { RESULT_KEYS, type ResultKey } from '../../shared/model/look-key.ts';
import { type DateOrder, datedDay, fullDay, monthName, shortDay, weekdayLetters } from '../../shared/text/day-text.ts';
import { celsiusText, type TemperatureUnit } from '../../shared/text/degrees.ts';
import type { Words } from '../../shared/text/english/english.ts';
import { type FirstWords, firstWords } from '../../shared/text/english/first-words.ts';
import {
  type FeedAmount,
  feedAmountText,
  kilogramsTyped,
  type Measures,
  unitOf,
  weightText,
} from '../../shared/text/feed-amount.ts';
import { instantText } from '../../shared/text/instant-text.ts';
import { loadWords, wordsHere } from '../../shared/text/load-words.ts';
import {
  changeSentence,
  fieldName,
  fieldValue,
  noticeSentence,
  proposalReason,
  refusalSentence,
  rowName,
  rowProblemSentence,
  stepSentence,
  stepTitle,
  stepWords,
  wholeProblemSentence,
} from '../../shared/text/sentences.ts';
import { amount } from '../../shared/text/share-text.ts';

export interface Wording {
  readonly words: FirstWords;
  readonly dateOrder: DateOrder;
  readonly weekStart: WeekStart;
  readonly temperature: TemperatureUnit;
  readonly measures: Measures;
  /** Single letters act on pages. */
  readonly letterKeys: boolean;
  readonly resultKeys: readonly ResultKey[];
  /** The day the workbook reckons with. */
  readonly today: IsoDay;
}

export const WordingContext = createContext<Wording>({
  words: firstWords,
  dateOrder: 'day-first',
  weekStart: 'monday',
  temperature: 'celsius',
  measures: 'metric',
  letterKeys: true,
  resultKeys: RESULT_KEYS,
  today: '1970-01-01',
});

/** The words of the frame, of the first start and of Today, for what is drawn on the first page. */
export const useFirstWords = (): FirstWords => useContext(WordingContext).words;

/** All words. A page that is drawn before they are here waits for them, as for its own script. */
export function useWords(): Words {
  const { language } = useContext(WordingContext).words;
  return wordsHere(language) ?? use(loadWords(language));
}

export const useToday = (): IsoDay => useContext(WordingContext).today;

/** Days as the person wants them written. */
export function useDays() {
  const {
    dateOrder,
    weekStart,
    today,
    words: { language },
  } = useContext(WordingContext);
  return {
    order: dateOrder,
    weekStart,
    today,
    short: (day: Day | IsoDay) => shortDay(day, dateOrder, language),
    /** Short, and with its year where that is not the present one. */
    dated: (day: IsoDay) => datedDay(day, today, dateOrder, language),
    full: (day: Day | IsoDay) => fullDay(day, dateOrder, language),
    instant: (instant: string) => instantText(instant, dateOrder, language),
    letters: (day: Day | IsoDay) => weekdayLetters(day, language),
    month: (month: number) => monthName(month, language),
  };
}

/** The keys of the typing grid as the person has them. */
export const useResultKeys = (): readonly ResultKey[] => useContext(WordingContext).resultKeys;

export const useLetterKeys = (): boolean => useContext(WordingContext).letterKeys;

export const useTemperatureUnit = (): TemperatureUnit => useContext(WordingContext).temperature;

/** Amounts of feed in the measures the person reads, and the unit that is meant when none is typed. */
export function useFeedAmounts() {
  const { measures, words } = useContext(WordingContext);
  return {
    text: (amount: FeedAmount) => feedAmountText(amount, measures, words.language),
    unit: (measure: keyof FeedAmount) => unitOf(measure, measures),
  };
}

/** Weights kept in kilograms, in the measures the person reads and types. */
export function useWeights() {
  const { measures, words } = useContext(WordingContext);
  return {
    measures,
    text: (kilograms: number) => weightText(kilograms, measures, words.language),
    typed: (weight: number) => kilogramsTyped(weight, measures),
  };
}

/** A number of things, with the decimal sign of the language. */
export function useAmount(): (value: number) => string {
  const { language } = useFirstWords();
  return (value) => amount(value, language);
}

type Rest<Sentence> = Sentence extends (words: never, ...rest: infer Given) => string ? Given : never;
type Order = Pick<Wording, 'dateOrder' | 'temperature'>;

/** Whole sentences in the language of the page, with days and degrees as the person wants them. */
export function useSentences() {
  const words = useWords();
  const { dateOrder, temperature } = useContext(WordingContext);
  return useMemo(() => sentencesOf(words, { dateOrder, temperature }), [words, dateOrder, temperature]);
}

function sentencesOf(words: Words, { dateOrder, temperature }: Order) {
  const day = (on: Day | IsoDay) => shortDay(on, dateOrder, words.language);
  const degrees = (celsius: number) => celsiusText(celsius, temperature, words.language);
  return {
    step: (...given: Rest<typeof stepTitle>) => stepTitle(words, ...given),
    stepWords: (...given: Parameters<typeof stepWords> extends [Words, ...infer Given] ? Given : never) =>
      stepWords(words, ...given),
    refusal: (refusal: Refusal) => refusalSentence(words, refusal, day, degrees),
    notice: (notice: Notice) => noticeSentence(words, notice, day),
    proposal: (reason: ProposalReason<IsoDay>) => proposalReason(words, reason, day),
    change: (...given: Rest<typeof changeSentence>) => changeSentence(words, ...given),
    historyStep: (...given: Rest<typeof stepSentence>) => stepSentence(words, ...given),
    rowProblem: (...given: Rest<typeof rowProblemSentence>) => rowProblemSentence(words, ...given),
    wholeProblem: (...given: Rest<typeof wholeProblemSentence>) => wholeProblemSentence(words, ...given),
    row: (...given: Rest<typeof rowName>) => rowName(words, ...given),
    field: (...given: Rest<typeof fieldName>) => fieldName(words, ...given),
    value: (table: string, field: string, value: string | number | null) =>
      fieldValue(words, table, field, value, dateOrder),
  };
}

/** What a change did, in words; these are among the first words, for the undo button of every page. */
export function useChangeSentence() {
  const { words } = useContext(WordingContext);
  return (change: ChangeWords) => changeSentence(words, change);
}

/** The sentence of a refusal, and null for none: only a refusal waits for all words. */
export function useRefusalSentence(refusal: Refusal | null): string | null {
  const { words, ...order } = useContext(WordingContext);
  if (!refusal) return null;
  const all = wordsHere(words.language) ?? use(loadWords(words.language));
  return sentencesOf(all, order).refusal(refusal);
}
