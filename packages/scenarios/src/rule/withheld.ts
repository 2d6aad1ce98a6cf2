/** What keeps a rig from being said to hold, whatever its runs say. */
import type { Assessed } from "../assessment/assessment.ts";
import type { RigStrengths } from "../strengths/rigStrengths.ts";

/** What somebody must look at, besides that for which it has lapsed. */
export function withheldIn({ withholds, upkeep }: Assessed, strengths: RigStrengths): readonly string[] {
  const said = upkeep.lapses.map((one) => ("sentence" in one ? one.sentence : ""));
  const open = strengths.parts.flatMap(({ needsInspection = [], beyond = [] }) => [...needsInspection, ...beyond]);
  const all = new Set([...withholds, ...open]);
  return [...all].filter((what) => !said.includes(what));
}
