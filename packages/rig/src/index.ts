export { BASIS_KINDS, parseBasis } from "./basis.ts";
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
export { judgePart } from "./ownJudgement.ts";
export { editDocument, type PathStep, pathSteps, pathText, valueAt } from "./path.ts";
export { MAX_RIG_TEXT, type RigReading, readRig } from "./readRig.ts";
export type * from "./rig.ts";
export { repeatedRigIds } from "./rigIds.ts";
export { GENERIC_STOCKS } from "./stocks.ts";
export {
  acceptsNumber,
  type Dimension,
  exampleText,
  expectedText,
  parseQuantity,
  quantityText,
  type ReadQuantity,
} from "./units.ts";
export { writeRig } from "./writeRig.ts";
