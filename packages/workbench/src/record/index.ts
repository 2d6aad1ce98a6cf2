export { dotsOf, dotsTold } from "../breakLog/dots.ts";
export {
  FIT_HEADS,
  fitNotes,
  fitRows,
  fitsTitle,
  gainWords,
  groupNumbers,
} from "../breakLog/groupNumbers.ts";
export {
  type MatchState,
  matchState,
  materialWords,
  previewHeads,
  previewRows,
  sameOptions,
  sourceChoice,
  strangeWords,
  type WordChoice,
  withSource,
} from "../breakLog/matchWords.ts";
export {
  draftMessages,
  draftOf,
  freshTest,
  nextTest,
  readDraft,
  type TestDraft,
  testFormFields,
  typedIn,
} from "../breakLog/testForm.ts";
export { following, loadedZones, notTooShort, readOff, withSurroundings } from "./along.ts";
export { alongCaption } from "./alongCaption.ts";
export { calendarSpan, datedOf, type PlacedDate, placeDates, staysOf } from "./calendar.ts";
export { calendarLayout } from "./calendarLayout.ts";
export { calendarTicks } from "./dateWords.ts";
export {
  asKind,
  type EntryFormField,
  entryWords,
  fieldValue,
  freshFields,
  PART_KINDS,
  WEBBING_KINDS,
} from "./entryKinds.ts";
export { type LaidItem, type LaidLane, laneHeight, lanesHeight, layLanes } from "./laneLayout.ts";
export { type LaneKind, lanesOf } from "./lanes.ts";
export { ownerFields, ownersIn, ownerValue, withFreshWebbing, withOwnerField, withoutOwner } from "./ownerFields.ts";
export { capitalPartName, ownerName, rigsIn } from "./ownerNames.ts";
export { logText, openWearFile, readWearText, saysInvented } from "./readWear.ts";
export { inWords, messagesUnder, whereAndWhat } from "./recordIssues.ts";
export { type DatedOutlook, outlookOf, type TakeDownState, usable } from "./takeDownState.ts";
export { takeDownMark, testLine, testsTakenWords } from "./takenWords.ts";
export { createWearFiles, type Matching, type WearFilesState } from "./wearFiles.ts";
export { earlierReplacements, type Replacement, wearReplacements } from "./wearReplacements.ts";
export { exampleLogOf, wearStartWith } from "./wearStart.ts";
export { basisKinds, flagWords, partStateWords, stateWords, weakest, zoneRows, zoneWords } from "./wearWords.ts";
export { type Needed, neededBy, type WebbingFacts, webbingFacts } from "./webbingFacts.ts";
