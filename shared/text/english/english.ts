import type { Language } from '../../kernel/language.ts';
import type { Widened } from '../translation.ts';
import { batches } from './batches.ts';
import { REASONS } from './box-proposals.ts';
import { boxes } from './boxes.ts';
import { calendarWords } from './calendar-file.ts';
import { calendarRefusalSentence } from './calendar-refusals.ts';
import { calibrationWords, ownSheets } from './calibration.ts';
import { cautions, classroom, glossary, help } from './cautions.ts';
import { startTroubleSentence } from './clashes.ts';
import { classPapers } from './class-papers.ts';
import { contradictionSentence } from './contradictions.ts';
import { copies } from './copies.ts';
import { errandWords } from './errand.ts';
import { evening } from './evening.ts';
import { feeding } from './feeding.ts';
import { firstWords } from './first-words.ts';
import { forecast } from './forecast.ts';
import { handOver } from './hand-over.ts';
import { handout } from './handout.ts';
import { ROW_WORDS } from './history.ts';
import { hivePapers } from './hive-papers.ts';
import { hives } from './hives.ts';
import { keyCard } from './key-card.ts';
import { labelWords } from './labels.ts';
import { lookWords } from './looks.ts';
import { losses } from './losses.ts';
import { menuWords, windowWords } from './menu.ts';
import { methodEditor } from './method-editor.ts';
import { BOX_TYPE_WORDS, BUILDER_TYPE_WORDS, COMB_WORDS, METHOD_WORDS } from './methods.ts';
import { moving } from './moving.ts';
import { notes } from './notes.ts';
import { plainLabels } from './plain-labels.ts';
import { practice } from './practice.ts';
import { preview } from './preview.ts';
import { print } from './print.ts';
import { printedPapers } from './printed-papers.ts';
import { queens } from './queens.ts';
import { NOTICES, REFUSALS } from './refusals.ts';
import { REMEDY_WORDS } from './remedies.ts';
import { season } from './season.ts';
import { seasonReport } from './season-report.ts';
import { SIGHTING_WORDS } from './sightings.ts';
import { slip } from './slip.ts';
import { sources } from './sources.ts';
import { STEP_TEXTS } from './steps.ts';
import { stock } from './stock.ts';
import { FILE_TROUBLE, IMPORT_FIELD_WORDS, PROBLEM, tablesIn, WHOLE_PROBLEM } from './tables-in.ts';
import { dictionaryWords, tablesOut, tableTitles, tableWords } from './tables-out.ts';
import { yardSheet } from './yard-sheet.ts';

/** All words of the window in English. Another language is an object of the same shape. */
export const english = {
  ...firstWords,
  evening,
  menu: menuWords,
  window: windowWords,
  slip,
  batches,
  hives,
  feeding,
  boxes,
  errand: errandWords,
  queens,
  notes,
  sources,
  stock,
  season,
  seasonReport,
  forecast,
  losses,
  print,
  printedPapers,
  plainLabels,
  calibration: calibrationWords,
  ownSheets,
  yardSheet,
  calendarFile: calendarWords,
  moving,
  tablesOut,
  tablesIn,
  importFields: IMPORT_FIELD_WORDS,
  tableTitles,
  handout,
  classPapers,
  handOver,
  hivePapers,
  keyCard,
  practice,
  preview,
  copies,
  cautions,
  glossary,
  help,
  classroom,
  looks: lookWords,
  methods: METHOD_WORDS,
  methodEditor,
  combs: COMB_WORDS,
  builderTypes: BUILDER_TYPE_WORDS,
  boxTypes: BOX_TYPE_WORDS,
  sightings: SIGHTING_WORDS,
  steps: STEP_TEXTS,
  remedies: REMEDY_WORDS,
  labels: labelWords,
  tables: tableWords,
  dictionary: dictionaryWords,
  /** Whole sentences, made by the functions of sentences.ts. */
  sentences: {
    ...firstWords.sentences,
    refusals: REFUSALS,
    notices: NOTICES,
    fileTroubles: FILE_TROUBLE,
    rowProblems: PROBLEM,
    wholeProblems: WHOLE_PROBLEM,
    rows: ROW_WORDS,
    proposals: REASONS,
    calendarRefusal: calendarRefusalSentence,
    contradiction: contradictionSentence,
    startTrouble: startTroubleSentence,
  },
} as const;

/** The words of any language. */
export type Words = Widened<typeof english> & { readonly language: Language };
