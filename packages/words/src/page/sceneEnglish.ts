/** Sentences of the picture of the scene as it is saved. Not part of the first load. */
export const SCENE_ENGLISH = {
  "legend.mainLine": "main line",
  "legend.backup": "backup",
  "legend.runBefore": "run before",
  "legend.tensionKn": "tension {words} kN",
  "legend.strength5": "95 % hold {strength}",
} as const;
