/** What must be read beside every verdict. Worded here and nowhere else; shown on screen, in the terminal and in print. */

import { formatLength } from "@secondline/rig";
import { type AnchorFacts, anchorCautions } from "./anchorCautions.ts";
import { type Judged, judgementCautions } from "./judgementCautions.ts";

/** Always shown, in this order. */
export const CAUTIONS: readonly string[] = [
  "This is a model of the rig, not the rig. It does not replace inspection, the makers' instructions, local codes and standards, or qualified practice.",
  "Textiles can lose much of their strength without showing it. A part that looks sound may not be.",
  "Do not rig from these numbers alone. Let somebody qualified check the rig, its parts and what was entered here.",
];

/** Said of everything that was computed from demo data. */
export const INVENTED = "Demo data: every number of this rig is invented. It describes no real line.";

/** Feet closer to the ground than this make a verdict thin: legs swing, and people are not points [m]. */
export const NEAR_GROUND = 1;

/** What else must be said of one study. */
export interface CautionFacts {
  /** The rig is demo data. */
  readonly invented: boolean;
  /** How many what-ifs gave no numbers that can be trusted. */
  readonly failedWhatIfs: number;
  /** Parts whose strength rests on memory or on an assumption. */
  readonly unfoundedParts: number;
  readonly parts: number;
  readonly hasBackup: boolean;
  /** Least height of the walker's feet above the ground over all what-ifs [m]; absent: no ground known. */
  readonly feetClearance?: number;
  /** How many what-ifs end with the walker on the ground. */
  readonly endedOnGround: number;
  /** Not every what-if of the rig was run: how many were, and how many its full set has. */
  readonly reduced?: { readonly run: number; readonly full: number };
  /** The coarse mesh was used. */
  readonly coarse?: boolean;
  /** Names of parts whose load was to get a ± and got none. */
  readonly withoutUncertainty?: readonly string[];
  readonly anchors?: readonly AnchorFacts[];
  /** Parts whose strength counts somebody's own judgement, or a factor that raises it. */
  readonly judged?: readonly Judged[];
  /** Factor that the user requires of every part [-]. */
  readonly required?: number;
}

const few = (count: number, of: number) => (count === of ? `All ${of}` : `${count} of ${of}`);

/**
 * Measured: the largest load of a leg, in a fall during which the other leg fails, in 14 runs each on two meshes of a
 * demonstration rig, whose walkers differ by a milligram at most: from 5 % below the mean to 8 % above it; a gram changed one by 12 %.
 */
const CHANCE =
  "Where a slack line snaps taut, loads are partly a matter of chance: a gram more or less on the walker can change one by a tenth, and the pull on the harness by a third where the main line fails during a catch. Do not count on a margin that is only just met.";

/** What the runs leave open: chance, what-ifs not run, a coarse mesh, loads without a ±. */
function ofTheRuns({ hasBackup, reduced, coarse, withoutUncertainty = [] }: CautionFacts): string[] {
  const said: string[] = hasBackup ? [CHANCE] : [];
  if (reduced) {
    said.push(
      `Not every what-if was run: ${reduced.run} here, ${reduced.full} in the full set. The worst case may be among the others.`,
    );
  }
  if (coarse)
    said.push("Computed on a coarse mesh, for a first look: peaks may be off. Check again on the standard mesh.");
  if (withoutUncertainty.length > 0) {
    said.push(
      `The second run that gives a load its ± failed, or other parts broke in it, for: ${withoutUncertainty.join(", ")}. How far these loads are off is not known.`,
    );
  }
  return said;
}

/** The cautions of a study: the general ones, then those that its facts call for. */
export function cautions(facts: CautionFacts): readonly string[] {
  const said = [...CAUTIONS, ...judgementCautions(facts.judged ?? [])];
  if (facts.unfoundedParts > 0) {
    said.push(
      `${few(facts.unfoundedParts, facts.parts)} strengths rest on common practice, memory or assumptions, not on tests of these parts. Test pieces of the real ones.`,
    );
  }
  if (facts.failedWhatIfs > 0) {
    const runs = facts.failedWhatIfs === 1 ? "One what-if" : `${facts.failedWhatIfs} what-ifs`;
    said.push(`${runs} could not be computed reliably. The verdict is incomplete: the worst case may be among them.`);
  }
  said.push(...ofTheRuns(facts));
  if (!facts.hasBackup) said.push("The rig has no backup: nothing catches the walker when the main line fails.");
  said.push(...anchorCautions(facts.anchors ?? [], facts.required ?? 1));
  if (facts.feetClearance === undefined) {
    said.push("No ground was given: whether the walker reaches it in a drop was not checked.");
  }
  if (facts.feetClearance !== undefined && facts.feetClearance < NEAR_GROUND) {
    said.push(
      facts.feetClearance <= 0
        ? "The walker's feet reach the ground in at least one what-if."
        : `The walker's feet come within ${formatLength(facts.feetClearance)} of the ground in at least one what-if.`,
    );
  }
  if (facts.endedOnGround > 0) {
    const runs = facts.endedOnGround === 1 ? "One what-if ends" : `${facts.endedOnGround} what-ifs end`;
    said.push(`${runs} on the ground. What the parts would have carried after that is not computed.`);
  }
  said.push(
    "Not modelled: edges and abrasion while loaded, swinging into rock, wind, a wrongly closed part, and how the body takes the force.",
  );
  if (facts.invented) said.push(INVENTED);
  return said;
}
