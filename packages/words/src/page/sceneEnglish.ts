/** Sentences of the picture of the scene as it is saved. Not part of the first load. */
export const SCENE_ENGLISH = {
  "legendInk.mainLine": "main line",
  "legendInk.runBefore": "run before",
  "legendInk.tensionKn": "tension {words} kN",
  "legendInk.strength5": "95 % hold {strength}",
} as const;
