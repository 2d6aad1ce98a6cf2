export { DATE_ORDERS } from "./breakLog/dateOrder.ts";
export { rememberedMatch, rememberMatch } from "./breakLog/keptMatches.ts";
export {
  type LogRow,
  type LogTable,
  type LogTableFault,
  type LogTableReading,
  readLogTable,
} from "./breakLog/logTable.ts";
export {
  type ColumnMatch,
  type ColumnSource,
  chosenWord,
  columnMatchSchema,
  isMatched,
  KNOWN_WORDS,
  missingColumns,
  suggestMatch,
  WORD_COLUMNS,
  type WordColumn,
  withWord,
  wordsIn,
} from "./breakLog/match.ts";
export { readMatched } from "./breakLog/readMatched.ts";
export { logTemplate } from "./breakLog/template.ts";
export {
  groupsBy,
  loadOf,
  resultWords,
} from "./breakLog/testGroups.ts";
export { type CardState, cardNotice, cardState, type DatesOf, isDated } from "./card/cardState.ts";
export { type HeavierWork, lookForHeavier } from "./card/heavier.ts";
export { type Heaviest, heavierOf } from "./card/heavierDesk.ts";
export { type ChancesDesk, type ChancesState, createChancesDesk, RUN_CHOICES } from "./chances/chancesDesk.ts";
export { type ChancesInHand, chancesInHand } from "./chances/chancesInHand.ts";
export { readSpread } from "./chances/spreads.ts";
export {
  type BreakLog,
  type DocumentName,
  type Documents,
  documentNameOf,
  type KeptWear,
  type WearWork,
  type WrittenEntry,
  type WrittenPart,
  type WrittenRecord,
  type WrittenRig,
  type WrittenWebbing,
} from "./documents/documents.ts";
export { rigName } from "./documents/rigName.ts";
export { checksCounted, evidenceParts } from "./evidence/evidenceTold.ts";
export { fileName } from "./files/fileName.ts";
export { type Foretold, foretold, USUAL_STEP_TIME } from "./foretold.ts";
export { GROUND_SHAPES, lowestProfile, type Profile } from "./ground/lowest.ts";
export {
  type LengthUnit,
  type ProfileFault,
  type ProfileReading,
  type ReachDoubt,
  reachDoubt,
  readProfile,
} from "./ground/readProfile.ts";
export {
  adopt,
  closeGroup,
  documentsOf,
  groupStart,
  record,
  redo,
  type Step,
  startHistory,
  undo,
} from "./history/history.ts";
export { viewOfStep, type WearPage } from "./history/inSight.ts";
export { type PageKey, pageKey } from "./history/pageKeys.ts";
export { type Candidate, candidatesOf, documentAt } from "./howFar/candidate.ts";
export { type HowFarField, howFarFields } from "./howFar/formFields.ts";
export { subjectOptions, sweepDoing } from "./howFar/formWords.ts";
export { governingAt } from "./howFar/governingAt.ts";
export { type FoundSweep, HowFarDesk, type NoCurve, numbersOf, type Preset, readingOf } from "./howFar/howFarDesk.ts";
export { nothingText } from "./howFar/nothingText.ts";
export { canDisconnect, canLoosen, type SweepNumber, sweepNumbers } from "./howFar/numbers.ts";
export { type PointSandbox, pointSandbox } from "./howFar/pointSandbox.ts";
export {
  firstAsked,
  foretoldSweep,
  type HowFarAsked,
  type HowFarInputFault,
  type HowFarPlace,
  type HowFarQuestion,
  type HowFarReading,
  readHowFar,
} from "./howFar/question.ts";
export { sweepSpots, sweepTable } from "./howFar/sweepRows.ts";
export { takeAsLayout } from "./howFar/takeAsLayout.ts";
export { KeptFounds } from "./inHand/keptFounds.ts";
export { evidenceFor, type LoadedEvidence } from "./inHand/known.ts";
export { openOnWorst } from "./inHand/openOnWorst.ts";
export type { Recordings } from "./inHand/recordings.ts";
export { type Actions, createSandbox, type Sandbox, type Start } from "./inHand/sandbox.ts";
export type {
  CameraName,
  Notice,
  ReadRig,
  RunSlice,
  SandboxState,
  Services,
  SessionSlice,
  SheetPlace,
  ShownRun,
  ViewName,
} from "./inHand/state.ts";
export { foundOf, outcomeOf } from "./inHand/verdictOf.ts";
export { viewOfOpened } from "./inHand/viewOfOpened.ts";
export type { Job, StoppableTask, TaskAnswer } from "./job/job.ts";
export { JobSlot } from "./job/jobSlot.ts";
export { findWork } from "./keeping/findWork.ts";
export { keepWork } from "./keeping/keepWork.ts";
export { type LostPart, readSaved, type SavedReading } from "./keeping/savedWork.ts";
export { keepingTrouble, rememberingShelf, type Shelf, setAside } from "./keeping/shelf.ts";
export { startFrom } from "./keeping/startFrom.ts";
export { type SavedWork, startAutosave, type WorkKeeper } from "./keeping/work.ts";
export { keyMove } from "./keys/keyMove.ts";
export { differencesTold, fallRows, type TableRow, verdictRows } from "./layouts/differences.ts";
export { eachLayout } from "./layouts/eachLayout.ts";
export { layoutCautions } from "./layouts/layoutCautions.ts";
export { type LayoutChange, layoutChanges } from "./layouts/layoutChanges.ts";
export {
  createLayouts,
  type Layout,
  type Layouts,
  LETTERS,
  MOST_LAYOUTS,
  type WrittenLayout,
  writtenLayout,
} from "./layouts/layouts.ts";
export { openLayouts } from "./layouts/openLayouts.ts";
export { MOST_CHANGES, roleWords } from "./layouts/roleWords.ts";
export { asideRunner, layoutRunner } from "./layouts/runners.ts";
export { answerWay } from "./newRig/answerChoices.ts";
export {
  ANSWER_IDS,
  ANSWERS,
  type AnswerId,
  type Answers,
  answerOf,
  isAsked,
  type NewRigAnswer,
  QUESTIONS,
  type QuestionId,
} from "./newRig/answers.ts";
export { withAnswer, withDrawnConnections, withDrawnGround, withProfile } from "./newRig/drawn.ts";
export type { AnswerDoubt, AnswerPlace, FaultKind, NewRigFault } from "./newRig/fault.ts";
export { answersText, keepAnswers, keptAnswers } from "./newRig/keptAnswers.ts";
export { createNewRigDesk, type NewRigDesk, type NewRigState, wasReplaced } from "./newRig/newRigDesk.ts";
export { type PlacesReading, placesText, readPlaces } from "./newRig/places.ts";
export { type AnswersReading, readAnswers } from "./newRig/readAnswers.ts";
export { type NewRig, rigFrom } from "./newRig/rigFrom.ts";
export { type Sketched, sketch } from "./newRig/sketcher.ts";
export { shownName } from "./pictures/shownName.ts";
export { clockDoes } from "./playback/clockDoes.ts";
export {
  type ClockOptions,
  type ClockState,
  createPlaybackClock,
  type FrameSource,
  type PlaybackClock,
  SPEEDS,
  type Speed,
} from "./playback/playbackClock.ts";
export { Scrubbing, type ScrubTarget } from "./playback/scrubbing.ts";
export { stripDoes } from "./playback/stripActions.ts";
export { throttled } from "./playback/throttled.ts";
export { type KeyAction, keyAction } from "./playback/timeKeys.ts";
export { fallTrouble } from "./question/fallTrouble.ts";
export { readPlace, stepFor } from "./question/placeOnLine.ts";
export { placeWords } from "./question/placeWords.ts";
export { type QuestionPart, questionParts } from "./question/questionParts.ts";
export { putGround, spreadJoints } from "./sheet/edits.ts";
export { addPart, confirmValues, isInGroup, marksInGroups, type NewPart } from "./sheet/marks.ts";
export { backupLikeMain, evenPlaces, MOST_CONNECTIONS, withSlackOrLength } from "./sheet/newParts.ts";
export {
  jointList,
  lineItems,
  MOST_CHANGED,
  type OwnItem,
  SHEET_GROUPS,
  type SheetGroup,
} from "./sheet/rigSheet.ts";
export type { SheetField, SheetItem, SheetKind, SheetList } from "./sheet/sheetItems.ts";
export { groupOfField } from "./sheet/titles.ts";
export { roundStep, typedQuantity } from "./sheet/typed.ts";
export { handStep, reachOfConnection, shareAt, withConnection } from "./side/connections.ts";
export { documentHost } from "./side/documentHost.ts";
export {
  groundFault,
  MOST_HANDLES,
  pointReachOf,
  type Steps,
  stretched,
  withoutPoint,
  withPoint,
  withPointAt,
} from "./side/ground.ts";
export { HANDLE_REACH, handleAt, handleName, handlesOf, nearestHandle, wordsBeside } from "./side/handles.ts";
export {
  faultWords,
  type Held,
  heldWords,
  KEY_STEP,
  rangeOf,
  type SideHost,
} from "./side/held.ts";
export { flatProjection, type Projection } from "./side/projection.ts";
export { type Point, type SideView, type Site, sideOf } from "./side/side.ts";
export { createSideDesk, type SideDesk, type SideInSight, sideInSight } from "./side/sideDesk.ts";
export { sideFrame } from "./side/sideFrame.ts";
export { LEG_FIELDS, type LegField, type LegsReading, readLegs } from "./site/legs.ts";
export {
  ANGLE_ERROR,
  LENGTH_ERROR,
  MEASURED_FIELDS,
  MEASURED_WAYS,
  type MeasuredField,
  type MeasuredReading,
  type MeasuredTexts,
  type MeasuredWay,
  readMeasured,
  SIDES,
} from "./site/measured.ts";
export { moveAnchorB, placeAnchorB } from "./site/moveAnchorB.ts";
export {
  EMPTY_STOCK,
  type StockDocument,
  type StockDoubt,
  type StockEntry,
  type StockEntryField,
  type StockFault,
  type StockReading,
  stockFrom,
} from "./stock/ownStock.ts";
export { STOCK_FIELDS, withPull } from "./stock/stockForm.ts";
export { isFoundBy, stockFaultText } from "./stock/stockWords.ts";
export { MOST_TEXT } from "./tables/readTable.ts";
export { sentenceBelowWord } from "./verdict/belowWord.ts";
export { type FallNumber, fallNumbers, rowNumbers } from "./verdict/fallNumbers.ts";
export { type ChangeSeen, changeNow, isChange, lastChangeTold, seeChange } from "./verdict/lastChange.ts";
export { limitsTold, marginsTold } from "./verdict/reasonWords.ts";
export { studyNotice } from "./verdict/studyNotice.ts";
export { studyTold } from "./verdict/studyWords.ts";
export { type CardDates, cardDates, cardInput, takeDownOutlook } from "./wear/dates.ts";
export { dayOf, isoOf, todayIso } from "./wear/days.ts";
export {
  addEntry,
  entriesOf,
  freeId,
  type GrippedPart,
  moveDate,
  movePlace,
  type Owner,
  ownerPath,
  removeEntry,
  replaceEntry,
  setField,
} from "./wear/entryEdits.ts";
export { tellKnownOf } from "./wear/knownFromWear.ts";
export { isResult, NOTHING_TYPED, pieceResultOf, readTyped, type Typed } from "./wear/pieceResults.ts";
export { placeOf, type Stretch } from "./wear/place.ts";
export { NO_PLAN, plannedCount, planOf, withPlan } from "./wear/planEdits.ts";
export { isNamed, nameFor } from "./wear/rigNamed.ts";
export { SITE_VALUES, type SiteKey, siteOf, withSite } from "./wear/siteEdits.ts";
export { type LearntInput, learnt, type PlanInput, type Planner, plan } from "./wear/teardown.ts";
export {
  createWearStore,
  type WearActions,
  type WearStateSlice,
  type WearStore,
} from "./wear/wearStore.ts";
