import type { firstWords as english } from '../english/first-words.ts';
import type { Translation } from '../translation.ts';
import { clashSentence, clashWords } from './clashes.ts';
import { followUps } from './follow-ups.ts';
import { frame } from './frame.ts';
import { CHANGES, history } from './history.ts';
import { MATERIAL_WORDS } from './materials.ts';
import { settings } from './settings.ts';
import { STEP_TITLES } from './step-titles.ts';
import { today } from './today.ts';
import { weather } from './weather.ts';

export const firstWords = {
  language: 'de',
  frame,
  day: {
    hint: {
      'day-first': 'heute, +3, 14 oder 14. Mai',
      'month-first': 'heute, +3, 14 oder Mai 14',
      'year-first': 'heute, +3, 14, 05-14 oder 2026-05-14',
    },
    fromToday: (days: number) => {
      if (days === 0) return 'heute';
      if (days === 1) return 'morgen';
      if (days === -1) return 'gestern';
      return days > 0 ? `in ${days} Tagen` : `vor ${-days} Tagen`;
    },
    unclear: {
      'day-first': 'Das ist kein Tag. Schreiben Sie 14. Mai, 14.5., +3 oder heute.',
      'month-first': 'Das ist kein Tag. Schreiben Sie Mai 14, 5/14, +3 oder heute.',
      'year-first': 'Das ist kein Tag. Schreiben Sie 2026-05-14, 05-14, +3 oder heute.',
    },
  },
  number: 'Geben Sie eine ganze Zahl ein, oder lassen Sie das Feld leer.',
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
} as const satisfies Translation<typeof english>;
