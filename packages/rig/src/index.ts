export { type Curve, strainAt, tensionAt } from "./curve.ts";
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
export { editDocument, type PathStep, pathSteps, pathText, valueAt } from "./path.ts";
export type * from "./rig.ts";
export {
  acceptsNumber,
  type Dimension,
  exampleText,
  expectedText,
  parseQuantity,
  quantityText,
  type ReadQuantity,
} from "./units.ts";
