import type { Language } from '../../kernel/language.ts';
import type { Widened } from '../translation.ts';
import { clashSentence, clashWords } from './clashes.ts';
import { followUps } from './follow-ups.ts';
import { frame } from './frame.ts';
import { CHANGES, history } from './history.ts';
import { MATERIAL_WORDS } from './materials.ts';
import { settings } from './settings.ts';
import { STEP_TITLES } from './step-titles.ts';
import { today } from './today.ts';
import { weather } from './weather.ts';

/** The words of the frame, of the first start and of Today come with the first script; all others with the page that says them. */
export const firstWords = {
  language: 'en',
  frame,
  day: {
    hint: {
      'day-first': 'today, +3, 14 or 14 May',
      'month-first': 'today, +3, 14 or May 14',
      'year-first': 'today, +3, 14, 05-14 or 2026-05-14',
    },
    fromToday: (days: number) => {
      if (days === 0) return 'today';
      if (days === 1) return 'tomorrow';
      if (days === -1) return 'yesterday';
      return days > 0 ? `in ${days} days` : `${-days} days ago`;
    },
    unclear: {
      'day-first': 'This is no day. Type 14 May, 14/5, +3 or today.',
      'month-first': 'This is no day. Type May 14, 5/14, +3 or today.',
      'year-first': 'This is no day. Type 2026-05-14, 05-14, +3 or today.',
    },
  },
  number: 'Type a whole number, or leave it empty.',
  today,
  stepTitles: STEP_TITLES,
  materials: MATERIAL_WORDS,
  followUps,
  weather,
  clashes: clashWords,
  history,
  settings,
  sentences: {
    changes: CHANGES,
    clash: clashSentence,
  },
} as const;

export type FirstWords = Widened<typeof firstWords> & { readonly language: Language };
