import type { Day } from '../../shared/kernel/day.ts';
import type { DateOrder } from '../../shared/text/day-text.ts';
import type { Words } from '../../shared/text/english/english.ts';
import type { PaperDocument } from './paper-document.ts';
import type { Part } from './tagged-parts.ts';

export interface HandoutRow {
  readonly day: Day;
  readonly daysAfterLarvae: number;
  /** What the bees do on that day. */
  readonly bees: string;
  readonly title: string;
  readonly what: string;
  readonly handsOff: boolean;
}

export interface Handout {
  /** In the language of the workbook. */
  readonly words: Words;
  readonly method: string;
  readonly firstDay: Day;
  readonly larvaeGivenOn: Day;
  readonly rows: readonly HandoutRow[];
  /** The life of the batch, one stage after another. */
  readonly stages: readonly { readonly name: string; readonly from: Day; readonly to: Day }[];
  readonly handsOff: readonly { readonly from: Day; readonly to: Day }[];
  readonly emergence: { readonly earliest: Day; readonly latest: Day };
  readonly sources: string;
  /** Words of the trade for the last page, with their meanings. */
  readonly glossary: readonly { readonly word: string; readonly meaning: string }[];
  /** With dates; for any year by day numbers; or with gaps that the class fills in. */
  readonly variant: 'dates' | 'day-numbers' | 'gaps';
  readonly paper: 'a4' | 'letter';
  readonly dateOrder: DateOrder;
  readonly madeAt: string;
}

export interface Sheet {
  readonly handout: Handout;
  readonly document: PaperDocument;
  readonly width: number;
  readonly height: number;
  readonly root: Part;
}

/** Millimetres, and points for what is small. */
export const MARGIN = 12;
export const SMALL = 9;
export const RULE = 0.1;
