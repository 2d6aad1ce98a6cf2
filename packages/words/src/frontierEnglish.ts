/** Sentences on load, drop and weight of layouts. Not part of the first load. */
export const FRONTIER_ENGLISH = {
  "frontier.title": "Load, drop and weight",
  "frontier.how":
    "Load: E of the anchor that is pulled harder. Drop: what 95 % of the falls stay under. Weight: webbing of both lines, without leash and hardware. What differs by less than 3 % counts as equal.",
  "frontier.marks": "Filled: not beaten. Open: beaten. Cross: fails.",
  "frontier.drop": "drop, m",
  "frontier.load": "load of an anchor, kN",
  "frontier.point": "{layout}, {weight}",
  "frontier.numbers": "{layout}: {load}, {drop} down, {weight}.",
  "frontier.best":
    "{layouts} {count|is|are} not beaten: no other of these layouts has at most the same load, drop and weight, and less of one.",
  "frontier.beaten": "{layout} is beaten by {by}: no more of anything, and less {what}.",
  "frontier.fails": "{layout} fails and stands outside: what gives way pulls little, and that is no merit.",
  "frontier.unknown": "{layout} has no whole verdict with these numbers, and stands outside.",
  "frontier.what.load": "load",
  "frontier.what.drop": "drop",
  "frontier.what.weight": "weight",
} as const;

export type FrontierKey = keyof typeof FRONTIER_ENGLISH;
