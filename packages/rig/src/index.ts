export { parseBasis } from "./basis.ts";
export { CAUTIOUS_LIMITS } from "./cautiousLimits.ts";
export { checkTexts } from "./checkTexts.ts";
export { strainAt, tensionAt } from "./curve.ts";
export { RIG_FORMAT, type RigDocument } from "./document.ts";
export {
  distinctFacts,
  type Fact,
  type FactAmount,
  type FactDay,
  type FactsOf,
  type FactValue,
  type FactValues,
  factMaker,
  type Issue,
  type Note,
  type NoValues,
  sameFact,
} from "./fact.ts";
export type { Field, QuantityField } from "./field.ts";
export { readField } from "./fieldInput.ts";
export { FIELDS, fieldAt } from "./fields.ts";
export * from "./format.ts";
export {
  backupNaturalLength,
  backupSectionLengths,
  chord,
  chordHeight,
  groundHeight,
  highestGround,
  legForceFactor,
  mainNaturalLength,
  mainSectionLengths,
  naturalLengths,
} from "./geometry.ts";
export { type GroundFault, groundFaults } from "./groundFaults.ts";
export { groupName } from "./groups.ts";
export { hiddenCharacter, visibleText } from "./hiddenCharacters.ts";
export { type Issues, issuesListed, MOST_ISSUES } from "./issueList.ts";
export { nearest } from "./nearest.ts";
export { judgePart } from "./ownJudgement.ts";
export { stocksIn } from "./ownStocks.ts";
export {
  type AnchorName,
  isPartId,
  isTape,
  type LineName,
  type PartId,
  partIds,
  partOfPath,
  partPath,
  partRef,
} from "./partId.ts";
export { editDocument, isGroup, pathSteps, pathText, valueAt } from "./path.ts";
export { readJson } from "./readJson.ts";
export { MAX_RIG_TEXT, type RigReading, readRig } from "./readRig.ts";
export type * from "./rig.ts";
export { fact as rigFact, guessed, type RigFact, type RigFacts } from "./rigFacts.ts";
export { repeatedRigIds } from "./rigIds.ts";
export { GENERIC_STOCKS } from "./stocks.ts";
export { confirm, editRig, marksIn } from "./unconfirmed.ts";
export {
  acceptsNumber,
  type Dimension,
  describeValue,
  exampleText,
  mayBeOfAll,
  parseQuantity,
  quantityText,
  unitsOf,
} from "./units.ts";
export { writeRig } from "./writeRig.ts";
