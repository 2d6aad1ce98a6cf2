export { BASIS_KINDS, parseBasis } from "./basis.ts";
export { checkTexts, type TextCheck } from "./checkTexts.ts";
export { type Curve, strainAt, tensionAt } from "./curve.ts";
export { RIG_FORMAT, RIG_TAG, RIG_VERSION, type RigDocument, rigSchema } from "./document.ts";
export type {
  BasisField,
  ChoiceField,
  Field,
  FieldTable,
  FlagField,
  QuantityField,
  StockField,
  TextField,
} from "./field.ts";
export { type FieldReading, readField } from "./fieldInput.ts";
export { FIELDS, fieldAt } from "./fields.ts";
export * from "./format.ts";
export {
  backupNaturalLength,
  backupSectionLengths,
  chord,
  chordHeight,
  groundHeight,
  legForceFactor,
  mainNaturalLength,
  mainSectionLengths,
  naturalLengths,
} from "./geometry.ts";
export { groupName } from "./groups.ts";
export { HIDDEN_REMEDY, hiddenCharacter, visibleText } from "./hiddenCharacters.ts";
export { type Issues, listed, MOST_ISSUES, moreText } from "./issueList.ts";
export { nearest } from "./nearest.ts";
export { judgePart } from "./ownJudgement.ts";
export { stocksIn } from "./ownStocks.ts";
export {
  type AnchorName,
  type AnchorPartId,
  isPartId,
  isTape,
  type LineEndId,
  type LineName,
  type PartId,
  type PartRef,
  partIds,
  partOfPath,
  partPath,
  partRef,
} from "./partId.ts";
export { editDocument, isGroup, type PathStep, pathSteps, pathText, valueAt } from "./path.ts";
export { type JsonFormat, type JsonReading, readJson } from "./readJson.ts";
export { MAX_RIG_TEXT, type RigReading, readRig } from "./readRig.ts";
export type * from "./rig.ts";
export { repeatedRigIds } from "./rigIds.ts";
export { GENERIC_STOCKS } from "./stocks.ts";
export { confirm, editRig, marksIn, unconfirmedIn } from "./unconfirmed.ts";
export {
  acceptsNumber,
  type Dimension,
  describeValue,
  exampleText,
  expectedText,
  parseQuantity,
  quantityText,
  type ReadQuantity,
} from "./units.ts";
export { writeRig } from "./writeRig.ts";
