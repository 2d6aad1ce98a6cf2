/** What chances rest on, and what must be read beside them. */
import type { Accuracy } from "@secondline/engine";
import type { Rig } from "@secondline/rig";
import type { FailureChances, PartStrength } from "@secondline/strength";
import { anchorCautions, anchorFacts } from "../anchorCautions.ts";
import { CAUTIONS, INVENTED } from "../cautions.ts";
import { judgedParts, judgementCautions } from "../judgementCautions.ts";
import type { Chances, SurfaceFit } from "./chancesOutcome.ts";
import { countOf, grouped } from "./chanceWords.ts";
import type { KeptStretches } from "./loadedParts.ts";
import type { UncertainInput } from "./uncertainInputs.ts";

export interface GroundFacts {
  readonly rig: Rig;
  readonly strengths: readonly PartStrength[];
  readonly accuracy: Accuracy;
  readonly runs: Chances["runs"];
  readonly inputs: readonly UncertainInput[];
  readonly surfaces: readonly SurfaceFit[];
  /** How many runs were made on the standard mesh too, and the largest relative change of a load that matters [-]. */
  readonly meshChange: { readonly runs: number; readonly most: number } | undefined;
  readonly dropped: readonly KeptStretches[];
  readonly found: FailureChances;
  readonly anyFails: Chances["anyFails"];
}

const percent = (share: number) =>
  `${share < 0.0995 ? Number((100 * share).toPrecision(1)) : Math.round(100 * share)} %`;

/** Fine enough to tell an error from its limit. */
const tenths = (share: number) => `${(100 * share).toFixed(1)} %`;

export function restsOn(facts: GroundFacts): readonly string[] {
  const { runs, accuracy, meshChange, found, anyFails, inputs } = facts;
  const said = [
    `${runs.done} simulated runs on the ${accuracy} mesh, spread evenly over ${inputs.length} uncertain inputs, with parts that cannot fail, so that every part shows the load it would have to carry.`,
    fitWords(facts),
    ...facts.dropped.map(
      ({ line, kept, of }) =>
        `${line}: ${kept} of its ${of} stretches are counted, those that came nearest to failing in any run; the others are left out.`,
    ),
  ];
  if (meshChange !== undefined) {
    said.push(
      `Loads brought to the standard mesh by ${meshChange.runs} runs on both, which changed those that matter by up to ${percent(meshChange.most)} in the mean${found.method === "surface" ? "; how far so few runs may be off is counted as scatter" : ""}.`,
    );
  }
  said.push(
    `Strengths as in the verdict: rated strength times its factors, lognormal; what has a common cause scatters together. ${grouped(found.first.runs)} draws. Intervals are for ${found.method === "surface" ? "that number" : "the number of runs"}, not for what the spreads leave open.`,
  );
  if (anyFails.sampling === "conditional" && anyFails.spread !== undefined) {
    said.push(
      `The chance that any part fails is from conditional sampling; its own coefficient of variation is ${percent(anyFails.spread)}.`,
    );
  }
  return said;
}

function fitWords({ surfaces, found }: GroundFacts): string {
  const worst = surfaces.filter((one) => one.matters).reduce((a, b) => (b.error > a.error ? b : a));
  return found.method === "surface"
    ? `Loads between the runs by quadratic surfaces. They miss runs that were left out by up to ${percent(worst.error)} (${worst.name}); that is counted as scatter too.`
    : "The runs themselves, each as likely as the other: no surface through them was good enough.";
}

/** What the numbers themselves hide: strengths that somebody raised, points that may not share, a ground nobody gave. */
function ofTheRig({ rig, strengths }: GroundFacts): readonly string[] {
  const anchors = anchorFacts(rig, strengths, { A: 0, B: 0 });
  return [
    ...judgementCautions(judgedParts(strengths, [])),
    ...anchorCautions(anchors, rig.requiredFactor.value),
    ...(rig.ground.length < 2 ? ["No ground was given: in how many runs the walker reaches it is not known."] : []),
  ];
}

/** With more of the failures outside of what was simulated, the reader must know [-]. */
const MUCH_BEYOND = 0.2;

export function chanceCautions(facts: GroundFacts): readonly string[] {
  const { runs, rig, found, surfaces, accuracy, meshChange } = facts;
  const said = [
    "These chances rest on spreads that were assumed, not measured on this rig. They rank parts and inputs; they promise nothing.",
    ...ofTheRig(facts),
  ];
  if (runs.lost > 0) {
    said.push(
      `In ${countOf(runs.lost, runs.done)} nothing catches the walker: no chance below says anything about that.`,
    );
  }
  if (runs.ground > 0) {
    said.push(
      `In ${countOf(runs.ground, runs.done)} the walker's feet reach the ground. Loads are those without the ground in the way.`,
    );
  }
  if (found.method === "runs") {
    const bad = surfaces.filter((one) => one.matters && one.error > one.limit);
    const list = bad.map((one) => `${one.name}: ${tenths(one.error)} (limit ${tenths(one.limit)})`).join(", ");
    said.push(
      `The fitted loads miss too much: ${list}. So the simulated runs are counted as they are: intervals are wide, extremes come more often than they would, and small chances and the inputs' shares are not known. More runs may help.`,
    );
  }
  if (runs.failed.length > 0) {
    said.push(`${countOf(runs.failed.length, runs.asked)} could not be computed reliably and were left out.`);
  }
  if (accuracy === "quick" && meshChange === undefined) {
    said.push("The runs are on a coarse mesh, and could not be checked on a finer one: loads may be off.");
  }
  if ((found.beyond ?? 0) > MUCH_BEYOND) {
    said.push(
      `${percent(found.beyond!)} of the failures lie outside of what was simulated: the small chance is a guess of its size.`,
    );
  }
  said.push(
    "One what-if only, and only until the first part fails: another what-if may be worse, and what follows on a failure is not counted.",
    ...CAUTIONS,
  );
  if (rig.invented) said.push(INVENTED);
  return said;
}
