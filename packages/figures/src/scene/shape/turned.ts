/** Half profiles of things that are round about an axis, [radius, place along the axis]. */
type Profile = readonly (readonly [number, number])[];

/** A conifer of height one: three tiers on a short stem. */
export const CONIFER_PROFILE: Profile = [
  [0.02, 0],
  [0.02, 0.1],
  [0.17, 0.13],
  [0.09, 0.4],
  [0.135, 0.42],
  [0.065, 0.68],
  [0.09, 0.7],
  [0, 1],
];

/** A tied knot: three turns of rope side by side [m]. */
export const KNOT_PROFILE: Profile = [
  [0, -0.052],
  [0.012, -0.05],
  [0.024, -0.04],
  [0.026, -0.028],
  [0.018, -0.018],
  [0.029, -0.008],
  [0.03, 0.006],
  [0.019, 0.016],
  [0.026, 0.026],
  [0.023, 0.04],
  [0.01, 0.05],
  [0, 0.052],
];
