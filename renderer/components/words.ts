import { createContext, useContext, useMemo } from 'react';
import type { Notice, Refusal } from '../../shared/contract/refusal.ts';
import type { Day, IsoDay, WeekStart } from '../../shared/kernel/day.ts';
import type { ProposalReason } from '../../shared/model/box-proposal.ts';
import { RESULT_KEYS, type ResultKey } from '../../shared/model/look-key.ts';
import { type DateOrder, datedDay, fullDay, monthName, shortDay, weekdayLetters } from '../../shared/text/day-text.ts';
import { celsiusText, type TemperatureUnit } from '../../shared/text/degrees.ts';
import { english, type Words } from '../../shared/text/english/english.ts';
import { type FeedAmount, feedAmountText, type Measures, unitOf } from '../../shared/text/feed-amount.ts';
import { instantText } from '../../shared/text/instant-text.ts';
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
  readonly words: Words;
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
  words: english,
  dateOrder: 'day-first',
  weekStart: 'monday',
  temperature: 'celsius',
  measures: 'metric',
  letterKeys: true,
  resultKeys: RESULT_KEYS,
  today: '1970-01-01',
});

export const useWords = (): Words => useContext(WordingContext).words;

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

/** A temperature kept in Celsius, in the degrees the person reads. */
export function useDegrees(): (celsius: number) => string {
  const { temperature, words } = useContext(WordingContext);
  return (celsius) => celsiusText(celsius, temperature, words.language);
}

/** Amounts of feed in the measures the person reads, and the unit that is meant when none is typed. */
export function useFeedAmounts() {
  const { measures, words } = useContext(WordingContext);
  return {
    text: (amount: FeedAmount) => feedAmountText(amount, measures, words.language),
    unit: (measure: keyof FeedAmount) => unitOf(measure, measures),
  };
}

/** A number of things, with the decimal sign of the language. */
export function useAmount(): (value: number) => string {
  const { language } = useWords();
  return (value) => amount(value, language);
}

type Rest<Sentence> = Sentence extends (words: Words, ...rest: infer Given) => string ? Given : never;

/** Whole sentences in the language of the page, with days and degrees as the person wants them. */
export function useSentences() {
  const { words, dateOrder, temperature } = useContext(WordingContext);
  return useMemo(() => {
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
  }, [words, dateOrder, temperature]);
}
