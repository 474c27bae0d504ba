import {
  AddBar,
  BarCounts,
  BatchId,
  BatchPreview,
  BatchStart,
  CloseBatch,
  DropStep,
  EditBatch,
  GiveAsPlanned,
  MarkStep,
  MoveStep,
  RecordLoss,
  RecordObservation,
  RemoveObservation,
  SetWarmth,
  TakeUpStep,
  UnmarkStep,
} from '../../shared/contract/batches.ts';
import {
  AcceptProposal,
  AddBoxes,
  EndPlacement,
  ListLooks,
  LookSheet,
  PlaceCells,
  RecordLook,
  RemoveLook,
  RetireBox,
  SaveBox,
} from '../../shared/contract/boxes.ts';
import { ListClashes } from '../../shared/contract/clashes.ts';
import { OpenCopy, RestoreCopy, SetSecondPlace } from '../../shared/contract/copies.ts';
import { KeepDraft } from '../../shared/contract/drafts.ts';
import { MakeErrand, PreviewErrand, TakeErrand } from '../../shared/contract/errand.ts';
import { ExportTables } from '../../shared/contract/exchange.ts';
import {
  FeedingSheet,
  FeedSeveral,
  ListFeedings,
  RecordFeeding,
  RemoveFeeding,
} from '../../shared/contract/feeding.ts';
import { CalendarChoice, CalendarOf } from '../../shared/contract/files.ts';
import { AnswerFollowUp } from '../../shared/contract/follow-ups.ts';
import { BatchAsked, DrawnChoice, HiveAsked, PlanChoice } from '../../shared/contract/forecast.ts';
import { GetRecord, ListSteps, UndoFrom } from '../../shared/contract/history.ts';
import {
  HiveId,
  HiveLookSheet,
  RecordHiveLook,
  RemoveHiveLook,
  SaveHive,
  SaveYard,
  SetRoles,
} from '../../shared/contract/hives.ts';
import { ImportTable, ImportWorkbook } from '../../shared/contract/import.ts';
import { GetMethod, SaveMethodCopy } from '../../shared/contract/methods.ts';
import { ListNotes } from '../../shared/contract/notes.ts';
import {
  PrintGlossary,
  PrintHivePage,
  PrintInspectorPages,
  PrintKeyCard,
  PrintQueenCard,
} from '../../shared/contract/papers.ts';
import { PreviewPlainLabels, PrintPlainLabels } from '../../shared/contract/plain-labels.ts';
import {
  LabelChoice,
  OfferLabels,
  PreviewLabel,
  PrintCalibration,
  PrintTimetable,
  PrintYardSheet,
  RemoveLabelSheet,
  RemovePrinter,
  SaveLabelSheet,
  SavePrinter,
} from '../../shared/contract/print.ts';
import {
  MoveQueen,
  PromiseQueen,
  QueenId,
  RecordFeedback,
  SaveQueen,
  TakeBackPromise,
} from '../../shared/contract/queens.ts';
import { CompareSeason, CompareStage, ExportFigures, PrintSeasonReport } from '../../shared/contract/season.ts';
import { RemoveWish, SaveWish } from '../../shared/contract/season-plan.ts';
import { SaveSettings } from '../../shared/contract/settings.ts';
import { SlipChange } from '../../shared/contract/slip.ts';
import { ListStock, MoveHive, RecordScore, RecordTest, RecordTreatment } from '../../shared/contract/stock.ts';
import { SaveWeather } from '../../shared/contract/weather.ts';
import { NotedPaper } from '../../shared/model/noted-paper.ts';
import { addBar } from '../operations/batches/add-bar.ts';
import { closeBatch } from '../operations/batches/close-batch.ts';
import { dropStep } from '../operations/batches/drop-step.ts';
import { editBatch } from '../operations/batches/edit-batch.ts';
import { getBatch } from '../operations/batches/get-batch.ts';
import { getBatchForm } from '../operations/batches/get-batch-form.ts';
import { giveAsPlanned } from '../operations/batches/give-as-planned.ts';
import { listBatches } from '../operations/batches/list-batches.ts';
import { listClashes } from '../operations/batches/list-clashes.ts';
import { listStartDays } from '../operations/batches/list-start-days.ts';
import { markStep } from '../operations/batches/mark-step.ts';
import { moveStep } from '../operations/batches/move-step.ts';
import { previewBatch } from '../operations/batches/preview-batch.ts';
import { previewClashes } from '../operations/batches/preview-clashes.ts';
import { previewSlip } from '../operations/batches/preview-slip.ts';
import { recordBarCounts } from '../operations/batches/record-bar-counts.ts';
import { recordLoss } from '../operations/batches/record-loss.ts';
import { recordObservation } from '../operations/batches/record-observation.ts';
import { removeBatch } from '../operations/batches/remove-batch.ts';
import { removeObservation } from '../operations/batches/remove-observation.ts';
import { reopenBatch } from '../operations/batches/reopen-batch.ts';
import { setWarmth } from '../operations/batches/set-warmth.ts';
import { startBatch } from '../operations/batches/start-batch.ts';
import { takeUpStep } from '../operations/batches/take-up-step.ts';
import { unmarkStep } from '../operations/batches/unmark-step.ts';
import { acceptProposal } from '../operations/boxes/accept-proposal.ts';
import { addBoxes } from '../operations/boxes/add-boxes.ts';
import { endPlacement } from '../operations/boxes/end-placement.ts';
import { getLookSheet } from '../operations/boxes/get-look-sheet.ts';
import { listAutumnPairs } from '../operations/boxes/list-autumn-pairs.ts';
import { listBoxes } from '../operations/boxes/list-boxes.ts';
import { listLooks } from '../operations/boxes/list-looks.ts';
import { placeCells } from '../operations/boxes/place-cells.ts';
import { recordLook } from '../operations/boxes/record-look.ts';
import { removeLook } from '../operations/boxes/remove-look.ts';
import { retireBox } from '../operations/boxes/retire-box.ts';
import { saveBox } from '../operations/boxes/save-box.ts';
import { leaveCopy } from '../operations/copies/leave-copy.ts';
import { listCopies } from '../operations/copies/list-copies.ts';
import { makeCopy } from '../operations/copies/make-copy.ts';
import { openCopy } from '../operations/copies/open-copy.ts';
import { releaseCopies } from '../operations/copies/release-copies.ts';
import { restoreCopy } from '../operations/copies/restore-copy.ts';
import { setSecondPlace } from '../operations/copies/set-second-place.ts';
import { keepDraft } from '../operations/drafts/keep-draft.ts';
import { listDrafts } from '../operations/drafts/list-drafts.ts';
import { feedSeveral } from '../operations/feeding/feed-several.ts';
import { getFeedingSheet } from '../operations/feeding/get-feeding-sheet.ts';
import { listFeedings } from '../operations/feeding/list-feedings.ts';
import { recordFeeding } from '../operations/feeding/record-feeding.ts';
import { removeFeeding } from '../operations/feeding/remove-feeding.ts';
import { getStaleCalendar } from '../operations/files/get-stale-calendar.ts';
import { previewCalendar } from '../operations/files/preview-calendar.ts';
import { getRecord } from '../operations/history/get-record.ts';
import { getUndoState } from '../operations/history/get-undo-state.ts';
import { listSteps } from '../operations/history/list-steps.ts';
import { redo } from '../operations/history/redo.ts';
import { undo } from '../operations/history/undo.ts';
import { undoFrom } from '../operations/history/undo-from.ts';
import { getHive } from '../operations/hives/get-hive.ts';
import { getHiveLookSheet } from '../operations/hives/get-hive-look-sheet.ts';
import { getHiveRecords } from '../operations/hives/get-hive-records.ts';
import { listHives } from '../operations/hives/list-hives.ts';
import { listStock } from '../operations/hives/list-stock.ts';
import { moveHive } from '../operations/hives/move-hive.ts';
import { recordHiveLook } from '../operations/hives/record-hive-look.ts';
import { recordScore } from '../operations/hives/record-score.ts';
import { recordTest } from '../operations/hives/record-test.ts';
import { recordTreatment } from '../operations/hives/record-treatment.ts';
import { removeHiveLook } from '../operations/hives/remove-hive-look.ts';
import { saveHive } from '../operations/hives/save-hive.ts';
import { saveYard } from '../operations/hives/save-yard.ts';
import { setRoles } from '../operations/hives/set-roles.ts';
import { getMethod } from '../operations/methods/get-method.ts';
import { saveMethodCopy } from '../operations/methods/save-method-copy.ts';
import { listNotes } from '../operations/notes/list-notes.ts';
import { getPrintSetup } from '../operations/print/get-print-setup.ts';
import { listPrintedPapers } from '../operations/print/list-printed-papers.ts';
import { listStaleSheets } from '../operations/print/list-stale-sheets.ts';
import { notePaper } from '../operations/print/note-paper.ts';
import { offerLabels } from '../operations/print/offer-labels.ts';
import { removeLabelSheet } from '../operations/print/remove-label-sheet.ts';
import { removePrinter } from '../operations/print/remove-printer.ts';
import { saveLabelSheet } from '../operations/print/save-label-sheet.ts';
import { savePrinter } from '../operations/print/save-printer.ts';
import { getQueen } from '../operations/queens/get-queen.ts';
import { listMotherLines } from '../operations/queens/list-mother-lines.ts';
import { listQueens } from '../operations/queens/list-queens.ts';
import { moveQueen } from '../operations/queens/move-queen.ts';
import { promiseQueen } from '../operations/queens/promise-queen.ts';
import { recordFeedback } from '../operations/queens/record-feedback.ts';
import { saveQueen } from '../operations/queens/save-queen.ts';
import { takeBackPromise } from '../operations/queens/take-back-promise.ts';
import { compareSeason } from '../operations/season/compare-season.ts';
import { getHiveStanding } from '../operations/season/get-hive-standing.ts';
import { getLosses } from '../operations/season/get-losses.ts';
import { getPlanForm } from '../operations/season/get-plan-form.ts';
import { getSeasonPlan } from '../operations/season/get-season-plan.ts';
import { listComparedBatches } from '../operations/season/list-compared-batches.ts';
import { previewPlan } from '../operations/season/preview-plan.ts';
import { removeWish } from '../operations/season/remove-wish.ts';
import { saveWish } from '../operations/season/save-wish.ts';
import { getSettings } from '../operations/settings/get-settings.ts';
import { saveSettings } from '../operations/settings/save-settings.ts';
import { answerFollowUp } from '../operations/today/answer-follow-up.ts';
import { getToday } from '../operations/today/get-today.ts';
import { listFollowUps } from '../operations/today/list-follow-ups.ts';
import { listWeather } from '../operations/weather/list-weather.ts';
import { saveWeather } from '../operations/weather/save-weather.ts';
import * as fetched from './fetched-operations.ts';
import {
  command,
  group,
  lifecycleCommand,
  lifecycleQuery,
  plainCommand,
  plainLifecycleCommand,
  plainQuery,
  query,
  resultQuery,
} from './procedures.ts';
import { workbookGroup } from './workbook-group.ts';

/** Every operation of the program: its name, what goes in, and the function that answers. */
export const appRouter = group({
  workbook: workbookGroup,
  batches: group({
    listBatches: plainQuery(listBatches),
    getBatch: query(BatchId, getBatch),
    getBatchForm: plainQuery(getBatchForm),
    previewBatch: resultQuery(BatchPreview, previewBatch),
    previewClashes: resultQuery(BatchPreview, previewClashes),
    previewSlip: resultQuery(SlipChange, previewSlip),
    listStartDays: resultQuery(BatchPreview, listStartDays),
    listClashes: query(ListClashes, listClashes),
    startBatch: command(BatchStart, startBatch),
    recordBarCounts: command(BarCounts, recordBarCounts),
    giveAsPlanned: command(GiveAsPlanned, giveAsPlanned),
    addBar: command(AddBar, addBar),
    markStep: command(MarkStep, markStep),
    unmarkStep: command(UnmarkStep, unmarkStep),
    moveStep: command(MoveStep, moveStep),
    dropStep: command(DropStep, dropStep),
    takeUpStep: command(TakeUpStep, takeUpStep),
    recordObservation: command(RecordObservation, recordObservation),
    recordLoss: command(RecordLoss, recordLoss),
    setWarmth: command(SetWarmth, setWarmth),
    removeObservation: command(RemoveObservation, removeObservation),
    editBatch: command(EditBatch, editBatch),
    closeBatch: command(CloseBatch, closeBatch),
    reopenBatch: command(BatchId, reopenBatch),
    removeBatch: command(BatchId, removeBatch),
  }),
  hives: group({
    listHives: plainQuery(listHives),
    getHive: query(HiveId, getHive),
    getHiveLookSheet: query(HiveLookSheet, getHiveLookSheet),
    saveYard: command(SaveYard, saveYard),
    saveHive: command(SaveHive, saveHive),
    setRoles: command(SetRoles, setRoles),
    getHiveRecords: query(HiveId, getHiveRecords),
    listStock: query(ListStock, listStock),
    recordScore: command(RecordScore, recordScore),
    recordTest: command(RecordTest, recordTest),
    recordTreatment: command(RecordTreatment, recordTreatment),
    moveHive: command(MoveHive, moveHive),
    recordHiveLook: command(RecordHiveLook, recordHiveLook),
    removeHiveLook: command(RemoveHiveLook, removeHiveLook),
    printHivePage: command(PrintHivePage, fetched.printHivePage),
    printInspectorPages: command(PrintInspectorPages, fetched.printInspectorPages),
  }),
  feeding: group({
    getFeedingSheet: query(FeedingSheet, getFeedingSheet),
    listFeedings: query(ListFeedings, listFeedings),
    recordFeeding: command(RecordFeeding, recordFeeding),
    feedSeveral: command(FeedSeveral, feedSeveral),
    removeFeeding: command(RemoveFeeding, removeFeeding),
  }),
  boxes: group({
    listBoxes: plainQuery(listBoxes),
    listAutumnPairs: plainQuery(listAutumnPairs),
    addBoxes: command(AddBoxes, addBoxes),
    getLookSheet: query(LookSheet, getLookSheet),
    placeCells: command(PlaceCells, placeCells),
    recordLook: command(RecordLook, recordLook),
    listLooks: query(ListLooks, listLooks),
    removeLook: command(RemoveLook, removeLook),
    makeErrand: command(MakeErrand, fetched.makeErrand),
    previewErrand: resultQuery(PreviewErrand, fetched.previewErrand),
    takeErrand: command(TakeErrand, fetched.takeErrand),
    endPlacement: command(EndPlacement, endPlacement),
    saveBox: command(SaveBox, saveBox),
    acceptProposal: command(AcceptProposal, acceptProposal),
    retireBox: command(RetireBox, retireBox),
  }),
  notes: group({
    listNotes: query(ListNotes, listNotes),
  }),
  queens: group({
    listQueens: plainQuery(listQueens),
    listMotherLines: plainQuery(listMotherLines),
    getQueen: query(QueenId, getQueen),
    moveQueen: command(MoveQueen, moveQueen),
    recordFeedback: command(RecordFeedback, recordFeedback),
    promiseQueen: command(PromiseQueen, promiseQueen),
    takeBackPromise: command(TakeBackPromise, takeBackPromise),
    saveQueen: command(SaveQueen, saveQueen),
    printQueenCard: command(PrintQueenCard, fetched.printQueenCard),
  }),
  today: group({
    getToday: plainQuery(getToday),
    listFollowUps: plainQuery(listFollowUps),
    answerFollowUp: command(AnswerFollowUp, answerFollowUp),
  }),
  season: group({
    exportFigures: command(ExportFigures, fetched.exportFigures),
    printSeasonReport: command(PrintSeasonReport, fetched.printSeasonReport),
    compareSeason: query(CompareSeason, compareSeason),
    listComparedBatches: query(CompareSeason, listComparedBatches),
    compareStage: query(CompareStage, fetched.compareStage),
    getBatchesToSettle: query(CompareStage, fetched.getBatchesToSettle),
    getLosses: query(CompareSeason, getLosses),
    getQueensToCome: plainQuery(fetched.getQueensToCome),
    getPlanForm: plainQuery(getPlanForm),
    getSeasonPlan: plainQuery(getSeasonPlan),
    saveWish: command(SaveWish, saveWish),
    removeWish: command(RemoveWish, removeWish),
    previewPlan: query(PlanChoice, previewPlan),
    previewDrawn: query(DrawnChoice, fetched.previewDrawn),
    getBatchExpectation: query(BatchAsked, fetched.getBatchExpectation),
    getHiveStanding: query(HiveAsked, getHiveStanding),
  }),
  print: group({
    offerLabels: query(OfferLabels, offerLabels),
    previewLabel: query(PreviewLabel, fetched.previewLabel),
    listStaleSheets: plainQuery(listStaleSheets),
    listPrintedPapers: plainQuery(listPrintedPapers),
    notePaper: command(NotedPaper, notePaper),
    printLabels: command(LabelChoice, fetched.printLabels),
    printYardSheet: command(PrintYardSheet, fetched.printYardSheet),
    printTimetable: command(PrintTimetable, fetched.printTimetable),
    previewPlainLabels: query(PreviewPlainLabels, fetched.previewPlainLabels),
    printPlainLabels: command(PrintPlainLabels, fetched.printPlainLabels),
    printGlossary: command(PrintGlossary, fetched.printGlossary),
    printKeyCard: command(PrintKeyCard, fetched.printKeyCard),
    getPrintSetup: plainQuery(getPrintSetup),
    saveLabelSheet: command(SaveLabelSheet, saveLabelSheet),
    removeLabelSheet: command(RemoveLabelSheet, removeLabelSheet),
    savePrinter: command(SavePrinter, savePrinter),
    removePrinter: command(RemovePrinter, removePrinter),
    printCalibration: command(PrintCalibration, fetched.printCalibration),
  }),
  files: group({
    getStaleCalendar: query(CalendarOf, getStaleCalendar),
    previewCalendar: query(CalendarChoice, previewCalendar),
    exportCalendar: command(CalendarChoice, fetched.exportCalendar),
    exportTables: command(ExportTables, fetched.exportTables),
    previewTable: resultQuery(ImportTable, fetched.previewTable),
    importTable: command(ImportTable, fetched.importTable),
    previewWorkbook: resultQuery(ImportWorkbook, fetched.previewWorkbook),
    importWorkbook: command(ImportWorkbook, fetched.importWorkbook),
  }),
  history: group({
    undo: plainCommand(undo),
    undoFrom: command(UndoFrom, undoFrom),
    redo: plainCommand(redo),
    getUndoState: plainQuery(getUndoState),
    listSteps: query(ListSteps, listSteps),
    getRecord: query(GetRecord, getRecord),
  }),
  methods: group({
    getMethod: query(GetMethod, getMethod),
    saveMethodCopy: command(SaveMethodCopy, saveMethodCopy),
  }),
  drafts: group({
    listDrafts: lifecycleQuery(listDrafts),
    keepDraft: lifecycleCommand(KeepDraft, keepDraft),
  }),
  copies: group({
    listCopies: lifecycleQuery(listCopies),
    makeCopy: plainLifecycleCommand(makeCopy),
    openCopy: lifecycleCommand(OpenCopy, openCopy),
    leaveCopy: plainLifecycleCommand(leaveCopy),
    restoreCopy: lifecycleCommand(RestoreCopy, restoreCopy),
    setSecondPlace: lifecycleCommand(SetSecondPlace, setSecondPlace),
    releaseCopies: plainLifecycleCommand(releaseCopies),
  }),
  weather: group({
    listWeather: plainQuery(listWeather),
    saveWeather: command(SaveWeather, saveWeather),
  }),
  settings: group({
    getSettings: plainQuery(getSettings),
    saveSettings: command(SaveSettings, saveSettings),
  }),
});

export type AppRouter = typeof appRouter;
