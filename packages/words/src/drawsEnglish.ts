/** Sentences on many runs of one what-if: the loads behind an E, and the band behind a trace. Not part of the first load. */
export const DRAWS_ENGLISH = {
  "weakest.here": "Nearest to its limit: {part}, × {margin}",
  "strip.title": "{part}: the loads behind E",
  "strip.person": "Pull on the person: the pulls behind E",
  "strip.axis": "load, kN",
  "strip.demand": "E {load}",
  "strip.strength": "R {strength}",
  "strip.limit": "limit {load}",
  "strip.draws":
    "A dot for each of {count} falls of this what-if, drawn with all that scatters: {least} to {most}, half of them up to {middle}.",
  "strip.single":
    "One run of this what-if as it stands: {most}. What scatters was not drawn for it, so E is told from it and its neighbours, on the safe side.",
  "strip.few":
    "A dot for each of {count} runs of this what-if: {least} to {most}. What scatters was not drawn for it, so E is told from them and their neighbours, on the safe side.",
  "strip.over": "{count|One of them lies|{count} of them lie} above R.",
  "strip.idle": "{count|One of them does|{count} of them do} not load it.",
  "strip.beyond": "R {strength} lies far to the right.",
  "band.key": "range of {count} draws",
  "band.says":
    "Shaded, behind the leash or the force that is pointed at: from the least to the largest force in {count} falls of this what-if. The verdict drew these falls, with all that scatters. The band ends where the first of these runs ends; in the leash it reaches up to {most}.",
  "strip.list": "All of them, in rising order: {list}.",
} as const;

export type DrawsKey = keyof typeof DRAWS_ENGLISH;
