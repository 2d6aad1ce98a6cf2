/** What keeps a rig from being said to hold, whatever its runs say. */
import { distinctFacts, type Fact, sameFact } from "@secondline/rig";
import type { Assessed } from "../assessment/assessment.ts";
import type { RigStrengths } from "../strengths/rigStrengths.ts";

/** What somebody must look at, besides that for which it has lapsed. */
export function withheldIn({ withholds, upkeep }: Assessed, strengths: RigStrengths): readonly Fact[] {
  const said = upkeep.lapses.flatMap((one) => ("sentence" in one ? [one.sentence] : []));
  const open = strengths.parts.flatMap(({ needsInspection = [], beyond = [] }) => [...needsInspection, ...beyond]);
  return distinctFacts([...withholds, ...open]).filter((what) => !said.some((one) => sameFact(one, what)));
}
