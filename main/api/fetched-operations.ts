import type { Desk } from '../operations/operation.ts';

/**
 * Operations whose code is fetched when they are first asked for. Papers, tables and the rates' distributions
 * bring large libraries with them, which would make every start wait, and most evenings print nothing.
 */
const fetched =
  <Input, Answer>(fetch: () => Promise<(desk: Desk, input: Input) => Answer | Promise<Answer>>) =>
  async (desk: Desk, input: Input): Promise<Answer> =>
    (await fetch())(desk, input);

/** The same for one that is asked without input. */
const fetchedPlain =
  <Answer>(fetch: () => Promise<(desk: Desk) => Answer | Promise<Answer>>) =>
  async (desk: Desk): Promise<Answer> =>
    (await fetch())(desk);

export const makeErrand = fetched(async () => (await import('../operations/boxes/make-errand.ts')).makeErrand);
export const previewErrand = fetched(async () => (await import('../operations/boxes/preview-errand.ts')).previewErrand);
export const takeErrand = fetched(async () => (await import('../operations/boxes/take-errand.ts')).takeErrand);
export const exportCalendar = fetched(
  async () => (await import('../operations/files/export-calendar.ts')).exportCalendar,
);
export const exportTables = fetched(async () => (await import('../operations/files/export-tables.ts')).exportTables);
export const importTable = fetched(async () => (await import('../operations/files/import-table.ts')).importTable);
export const importWorkbook = fetched(
  async () => (await import('../operations/files/import-workbook.ts')).importWorkbook,
);
export const previewTable = fetched(async () => (await import('../operations/files/preview-table.ts')).previewTable);
export const previewWorkbook = fetched(
  async () => (await import('../operations/files/preview-workbook.ts')).previewWorkbook,
);
export const printHivePage = fetched(
  async () => (await import('../operations/hives/print-hive-page.ts')).printHivePage,
);
export const printInspectorPages = fetched(
  async () => (await import('../operations/hives/print-inspector-pages.ts')).printInspectorPages,
);
export const previewLabel = fetched(async () => (await import('../operations/print/preview-label.ts')).previewLabel);
export const previewPlainLabels = fetched(
  async () => (await import('../operations/print/preview-plain-labels.ts')).previewPlainLabels,
);
export const printCalibration = fetched(
  async () => (await import('../operations/print/print-calibration.ts')).printCalibration,
);
export const printGlossary = fetched(async () => (await import('../operations/print/print-glossary.ts')).printGlossary);
export const printKeyCard = fetched(async () => (await import('../operations/print/print-key-card.ts')).printKeyCard);
export const printLabels = fetched(async () => (await import('../operations/print/print-labels.ts')).printLabels);
export const printPlainLabels = fetched(
  async () => (await import('../operations/print/print-plain-labels.ts')).printPlainLabels,
);
export const printTimetable = fetched(
  async () => (await import('../operations/print/print-timetable.ts')).printTimetable,
);
export const printYardSheet = fetched(
  async () => (await import('../operations/print/print-yard-sheet.ts')).printYardSheet,
);
export const printQueenCard = fetched(
  async () => (await import('../operations/queens/print-queen-card.ts')).printQueenCard,
);
export const exportFigures = fetched(
  async () => (await import('../operations/season/export-figures.ts')).exportFigures,
);
export const printSeasonReport = fetched(
  async () => (await import('../operations/season/print-season-report.ts')).printSeasonReport,
);
export const previewDrawn = fetched(async () => (await import('../operations/season/preview-drawn.ts')).previewDrawn);
export const compareStage = fetched(async () => (await import('../operations/season/compare-stage.ts')).compareStage);
export const getBatchExpectation = fetched(
  async () => (await import('../operations/season/get-batch-expectation.ts')).getBatchExpectation,
);
export const getBatchesToSettle = fetched(
  async () => (await import('../operations/season/get-batches-to-settle.ts')).getBatchesToSettle,
);
export const getQueensToCome = fetchedPlain(
  async () => (await import('../operations/season/get-queens-to-come.ts')).getQueensToCome,
);
