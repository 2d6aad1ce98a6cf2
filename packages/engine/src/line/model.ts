/**
 * A problem made ready to compute: two lines in one memory, what holds them together, and the step size.
 * Built once per run; the step size is chosen here, from the stiffest line at its lightest node.
 */

import { hypot } from "../portable/index.ts";
import type { Anchor, LineMake, Material, Problem } from "../problem.ts";
import { draftLine, endOf, type Line, placeLine, sectionsOf, stepLimit } from "./line.ts";
import { branchStiffness } from "./maxwell.ts";
import type { Accuracy, NodePlace, SizeOf } from "./mesh.ts";
import { tailSizes } from "./tails.ts";
import { strainAt, type TensionCurve, tensionCurve } from "./tensionCurve.ts";

/** Nodes that move as one until they part. `main` is a node of the main line, `backup` of the backup. */
export interface Joint {
  readonly kind: "connection" | "tape";
  readonly at: number;
  readonly main: number;
  readonly backup: number;
  readonly strength: number;
}

export interface Model {
  readonly problem: Problem;
  readonly main: Line;
  readonly backup: Line | undefined;
  readonly joints: readonly Joint[];
  readonly leash: { readonly material: Material; readonly curve: TensionCurve };
  /** Node of the main line where the walker starts. */
  readonly start: number;
  readonly size: number;
  readonly step: number;
  readonly limits: StepLimits;
  /** Numbers of kernel memory the lines need. */
  readonly memory: number;
}

/** Longest stable step of every part by itself [s]; infinite if the rig does not have the part. */
export interface StepLimits {
  readonly main: number;
  readonly backup: number;
  /** Step of the ring on the leash. */
  readonly leash: number;
  /** Step of master points on their legs. */
  readonly anchors: number;
}

/** Element size per accuracy at spans that allow it, and the least number of elements on a line. */
const ELEMENT_SIZE: Readonly<Record<Accuracy, { size: number; least: number }>> = {
  quick: { size: 1, least: 24 },
  standard: { size: 0.4, least: 48 },
  fine: { size: 0.2, least: 96 },
};
/** Share of the stability limit 2/ω that is taken as the step [-]. */
const STEP_SHARE = 0.92;
/**
 * An end that is let go flies at the wave speed times its strain: above this strain at the pretension [-], steps get shorter, so
 * that no element turns too far in one.
 */
const RECOIL_STRAIN = 0.055;
/**
 * How much longer than the main line's a stiffer backup's elements may be: where the main line may part anywhere, where it is cut,
 * and where it stays whole and the backup only hangs beside it. In a short bay that catches, long ones make loads too small; after
 * a cut, the longer steps that they allow leave more of the energy unaccounted for.
 */
const LONGEST_BACKUP_RATIO = { parting: 1.2, cut: 1.5, whole: 2 } as const;
/** Mass of a master point when the problem gives none [kg]. */
export const MASTER_MASS = 0.5;

export interface ModelOptions {
  readonly accuracy?: Accuracy;
  /** Element size to use instead of the accuracy's [m]. */
  readonly size?: number;
  /** Share of the longest stable step, 0 < share ≤ 1; for convergence studies. */
  readonly stepShare?: number;
  /**
   * The mesh on which a run may go on once a catch is over: elements so many times as long, none shorter for a tail that whips, and no
   * node where the walker was. By 1 only the tail's elements become longer. Absent: the mesh to begin on.
   */
  readonly coarser?: number;
}

export function chordOf(problem: Problem): number {
  return hypot(problem.span, problem.rise);
}

/** Builds the model of a checked problem. */
export function buildModel(problem: Problem, options: ModelOptions = {}): Model {
  const chord = chordOf(problem);
  const wanted = ELEMENT_SIZE[options.accuracy ?? "standard"];
  const { coarser } = options;
  const size = (options.size ?? Math.min(wanted.size, chord / wanted.least)) * (coarser ?? 1);
  const couplings = [
    ...(problem.backup?.connections ?? []).map((joint) => ({ ...joint, kind: "connection" as const })),
    ...(problem.backup?.tapes ?? []).map((joint) => ({ ...joint, kind: "tape" as const })),
  ];
  const shared = couplings.map(({ at }) => ({ at, rank: 2 }));
  const cutAt = problem.cut?.at;
  const innerCut = cutAt !== undefined && cutAt > 0 && cutAt < 1 ? cutAt : undefined;
  const held = [...shared, ...(innerCut === undefined ? [] : [{ at: innerCut, rank: 1 }])];
  const heldAtStart = [{ at: problem.walker.at, rank: 0 }, ...held];
  const mainLength = mainNaturalLength(problem);
  const standard = Math.min(ELEMENT_SIZE.standard.size, chord / ELEMENT_SIZE.standard.least);
  const draftMain = (places: readonly NodePlace[], sizeOf?: SizeOf) =>
    placeLine(draftLine("main", problem.main, mainLength, size, places, innerCut, sizeOf), 0);
  const first = () => draftMain(heldAtStart, tailSizes(problem, { size, standard }));
  const main = coarser === undefined ? first() : draftMain(coarser === 1 ? heldAtStart : held);
  // Elements of the backup follow the main line that the run began on, as long as they stay as they are.
  const ruling = coarser === 1 ? first() : main;
  const backupDraft =
    problem.backup &&
    draftLine(
      "backup",
      problem.backup,
      chord * (1 + problem.backup.slack),
      size * backupScale(problem, stepLimit(ruling) / size),
      shared,
      undefined,
    );
  const backup = backupDraft && placeLine(backupDraft, endOf(main));
  const joints = backup
    ? couplings.map(({ kind, at, strength }) => ({
        kind,
        at,
        main: nodeBesideCut(main, problem, at),
        backup: backup.nodeAt(at),
        strength: strength ?? Number.POSITIVE_INFINITY,
      }))
    : [];
  const leash = { material: problem.leash.material, curve: tensionCurve(problem.leash.material.curve) };
  const limits = {
    main: stepLimit(main),
    backup: backup ? stepLimit(backup) : Number.POSITIVE_INFINITY,
    leash: leashLimit(problem, leash.curve),
    anchors: anchorLimit(problem, backup ? [main, backup] : [main]),
  };
  const step = (options.stepShare ?? 1) * stepShareOf(problem) * Math.min(...Object.values(limits));
  return {
    problem,
    main,
    backup,
    joints,
    leash,
    start: nodeBesideCut(main, problem, problem.walker.at),
    size,
    step,
    limits,
    memory: endOf(backup ?? main),
  };
}

/** Share of the stability limit that the steps of a problem use [-]. */
function stepShareOf(problem: Problem): number {
  if (problem.cut === undefined && problem.main.strength === undefined) return STEP_SHARE;
  const strains = sectionsOf(problem.main).map(({ material }) =>
    strainAt(tensionCurve(material.curve), problem.main.pretension),
  );
  return STEP_SHARE * Math.min(1, RECOIL_STRAIN / Math.max(...strains));
}

/**
 * How much longer the backup's elements are than the main line's. A wave crosses longer elements of a stiffer backup in about the
 * time that it takes through the main line's quickest one, `crossing` over the element size [s/m], so that neither line rules the
 * other's steps. A short tail beside a cut has quick ones: the bay beside it, which catches, has short elements as well.
 */
function backupScale(problem: Problem, crossing: number): number {
  const speed = (make: LineMake) => Math.max(...sectionsOf(make).map(({ material }) => waveSpeed(material)));
  const [main, backup] = [speed(problem.main), speed(problem.backup!)];
  const stiffer = Math.max(backup / main, 1);
  const least = Math.min(stiffer, LONGEST_BACKUP_RATIO.parting);
  const most = LONGEST_BACKUP_RATIO[mayPart(problem.main) ? "parting" : problem.cut ? "cut" : "whole"];
  return Math.min(Math.max(crossing * backup, least), stiffer, most);
}

/** Whether a line may part elsewhere than at a planned cut. */
const mayPart = ({ strength, weakZones }: LineMake): boolean =>
  [strength, ...(weakZones ?? []).map((zone) => zone.strength)].some(Number.isFinite);

/** Speed of a fast axial pull at the stiffest place of the curve [m/s]. */
export const waveSpeed = (material: Material): number =>
  Math.sqrt((tensionCurve(material.curve).maxSlope + branchStiffness(material.branches)) / material.mass);

/**
 * Node of a place on the main line. What shares its node with the cut is on the side of it where the problem has it; what is at the
 * cut itself stays with the piece that carries the walker.
 */
function nodeBesideCut(main: Line, { walker, cut }: Problem, at: number): number {
  const node = main.nodeAt(at);
  if (node !== main.seam || cut === undefined) return node;
  return (at === cut.at ? walker.at : at) > cut.at ? node + 1 : node;
}

/** Natural length of the main line, such that straight and weightless it carries its pretension [m]. */
export function mainNaturalLength(problem: Problem): number {
  const { pretension } = problem.main;
  let stretched = 0;
  let from = 0;
  for (const { to, material } of sectionsOf(problem.main)) {
    stretched += (to - from) * (1 + strainAt(tensionCurve(material.curve), pretension));
    from = to;
  }
  return chordOf(problem) / stretched;
}

/** The ring between leash and lines: the leash alone, at twice its stiffness for what the contact adds [s]. */
function leashLimit(problem: Problem, curve: TensionCurve): number {
  const stiffness = (curve.maxSlope + branchStiffness(problem.leash.material.branches)) / problem.leash.length;
  return 2 / Math.sqrt((2 * stiffness) / problem.ring.mass);
}

/** Master points on their legs and the lines' end elements [s]. */
function anchorLimit(problem: Problem, lines: readonly Line[]): number {
  let limit = Number.POSITIVE_INFINITY;
  for (const end of ["A", "B"] as const) {
    const { legs, mass } = anchorOf(problem, end);
    if (!legs) continue;
    let stiffness = legs.reduce((sum, leg) => sum + leg.stiffness, 0);
    let moved = mass ?? MASTER_MASS;
    for (const { runs, masses, lengths } of lines) {
      const run = end === "A" ? runs[0]! : runs.at(-1)!;
      stiffness += (2 * (run.curve.maxSlope + run.stiffness)) / lengths.at(end === "A" ? 0 : -1)!;
      moved += masses.at(end === "A" ? 0 : -1)!;
    }
    limit = Math.min(limit, 2 / Math.sqrt(stiffness / moved));
  }
  return limit;
}

/** The direction A → B at rest. */
export function chordDirection(problem: Problem): readonly [number, number, number] {
  const chord = chordOf(problem);
  return [problem.span / chord, 0, problem.rise / chord];
}

export const anchorOf = (problem: Problem, end: "A" | "B"): Anchor => problem.anchors?.[end] ?? {};
