/**
 * Load against drop against weight of layouts side by side: which of them none of the others beats in all three. Weight is that of the
 * webbing or rope of both lines as they hang, without leash and hardware.
 */
import { backupSectionLengths, mainSectionLengths, type Rig } from "@secondline/rig";
import type { Outcome } from "../outcome/outcome.ts";

export const FRONTIER_QUANTITIES = ["load", "drop", "weight"] as const;
export type FrontierQuantity = (typeof FRONTIER_QUANTITIES)[number];

export interface FrontierPoint {
  /** E of the anchor that is pulled harder, in its worst event [N]. */
  readonly load: number;
  /** What 95 % of the falls stay under in the worst what-if [m]. */
  readonly drop: number;
  /** [kg] */
  readonly weight: number;
}

/**
 * Fails: it stands outside, for what gives way or lets go early pulls little and is no merit. Unknown: its search is not whole, or has no
 * such number. Beaten by another one, in these quantities; else none beats it.
 */
export type FrontierStanding =
  | { readonly kind: "unbeaten" }
  | { readonly kind: "beaten"; readonly by: number; readonly inWhat: readonly FrontierQuantity[] }
  | { readonly kind: "fails" }
  | { readonly kind: "unknown" };

export interface FrontierLayout {
  readonly name: string;
  readonly at?: FrontierPoint;
  readonly standing: FrontierStanding;
}

/** Less of a difference is none: meshes differ by as much [-]. */
const NOTABLE_DIFFERENCE = 0.03;

/** The layouts in the order of `layouts`, each with the outcome of its whole search. */
export function frontier(
  layouts: readonly { readonly rig: Rig; readonly outcome: Outcome }[],
): readonly FrontierLayout[] {
  const points = layouts.map(({ rig, outcome }) => pointOf(rig, outcome));
  const counted = points.map((at, i) => (standsOutside(layouts[i]!.outcome) ? undefined : at));
  return layouts.map(({ outcome }, i): FrontierLayout => {
    const at = points[i];
    return { name: outcome.rigName, ...(at ? { at } : {}), standing: standingOf(outcome, counted, i) };
  });
}

/** A verdict of a part of the search is of other what-ifs than that of a whole one. */
const standsOutside = ({ verdict, search }: Outcome): boolean => verdict === "fails" || !search.complete;

function standingOf(
  { verdict, search }: Outcome,
  counted: readonly (FrontierPoint | undefined)[],
  layout: number,
): FrontierStanding {
  if (verdict === "fails") return { kind: "fails" };
  const own = counted[layout];
  if (!own || !search.complete) return { kind: "unknown" };
  for (const [by, other] of counted.entries()) {
    if (!other || by === layout || FRONTIER_QUANTITIES.some((one) => other[one] > own[one])) continue;
    const inWhat = FRONTIER_QUANTITIES.filter((one) => other[one] < (1 - NOTABLE_DIFFERENCE) * own[one]);
    if (inWhat.length > 0) return { kind: "beaten", by, inWhat };
  }
  return { kind: "unbeaten" };
}

function pointOf(rig: Rig, { falls, cautions }: Outcome): FrontierPoint | undefined {
  const anchors = cautions.find((one) => one.kind === "anchors")?.anchors ?? [];
  const load = Math.max(0, ...anchors.map(({ demand }) => demand));
  if (load === 0 || !falls.deepest) return undefined;
  return { load, drop: falls.deepest.drop, weight: weightOf(rig) };
}

function weightOf(rig: Rig): number {
  const sum = (sections: Rig["main"]["sections"], lengths: readonly number[]): number =>
    sections.reduce((all, { stock }, i) => all + stock.mass * lengths[i]!, 0);
  return (
    sum(rig.main.sections, mainSectionLengths(rig)) +
    (rig.backup ? sum(rig.backup.sections, backupSectionLengths(rig)) : 0)
  );
}
