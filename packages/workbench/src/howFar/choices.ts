/** What a sweep can look at, as choices; and the ranges that it goes over. */
import { partIds, type Rig } from "@secondline/rig";
import type { SweepWhat } from "@secondline/scenarios";
import type { SweepNumber } from "./numbers.ts";
import type { HowFarAsked } from "./question.ts";

/** What is looked at, as a choice has it. */
export const whatText = (what: SweepWhat): string => (what.kind === "load" ? `load:${what.part}` : what.kind);
/** All that can be looked at in a rig. */
export const whatsOf = (rig: Rig): readonly SweepWhat[] => [
  { kind: "margin" },
  { kind: "drop" },
  { kind: "height" },
  ...partIds(rig).map((part): SweepWhat => ({ kind: "load", part })),
];
/** The kind of quantity that its limit is. */
export const limitKind = ({ kind }: SweepWhat) => (kind === "margin" ? "margin" : kind === "load" ? "force" : "length");

type Ranges = HowFarAsked["ranges"];

/** The ranges with another number at a place, over the range that this begins with; without one where there is no such number. */
export function withNumber(ranges: Ranges, place: 0 | 1, number: SweepNumber | undefined): Ranges {
  const next = ranges.slice(0, 2);
  if (!number) next.splice(place, 1);
  else next[place] = { name: number.name, from: number.from, to: number.to };
  return next;
}
