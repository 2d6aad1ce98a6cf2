/** From a rig and a what-if to the problem that the engine solves. */
import type {
  Anchor,
  BackupLine,
  Connection,
  LineMake,
  MainLine,
  Material,
  Problem,
  Section,
} from "@secondline/engine";
import {
  type AnchorSide,
  backupNaturalLength,
  backupSectionLengths,
  chord,
  type LineStock,
  mainSectionLengths,
  type Rig,
  type WebbingSection,
} from "@secondline/rig";
import { anchorLegs } from "./anchorLegs.ts";
import type { BreakingStrengths, LineBreaking } from "./breakingStrengths.ts";
import type { WhatIf } from "./outcome.ts";
import { whatIfTitle } from "./whatIf.ts";

/**
 * How long feet take to leave the line [s]. Falling off it is a matter of balance; when the line itself goes, they lose it
 * faster.
 */
const LET_GO_FALL = 0.3;
const LET_GO_CUT = 0.15;
/** A moment of rest before the main line or a leg fails, so that its going is seen [s]. */
const CUT_TIME = 0.05;
const GRAVITY = 9.80665;

export interface ProblemOptions {
  /** When the main line or a leg fails [s]; must be given for a walker being caught: the time of the leash's peak. */
  readonly cutTime?: number;
  /** Simulated time [s]; default: long enough for the deepest drop, see `defaultDuration`. */
  readonly duration?: number;
  /** Lines whose webbing and ends part above their strength; default: both. */
  readonly linesThatPart?: readonly LineName[];
}
export type LineName = "main" | "backup";

/** The engine's problem for one what-if. Parts give way at the strengths given. */
export function toProblem(
  rig: Rig,
  whatIf: WhatIf,
  strengths: BreakingStrengths,
  options: ProblemOptions = {},
): Problem {
  const standing = whatIf.kind === "leashFall" || whatIf.walker !== "hanging";
  const loses = whatIf.kind === "mainFails" && whatIf.walker === "standing";
  const parts = options.linesThatPart ?? ["main", "backup"];
  const leg = whatIf.kind === "legFails" ? whatIf : undefined;
  const anchors = {
    ...anchor("A", rig.anchorA),
    ...anchor("B", rig.anchorB),
    ...(leg ? { [leg.anchor]: { legs: anchorLegs(rig, leg.anchor, strengths.points[leg.anchor]) } } : {}),
  };
  return {
    name: `${rig.name}: ${whatIfTitle(whatIf, rig.span)}`,
    span: rig.span,
    rise: rig.rise,
    main: mainLine(rig, parts.includes("main") ? strengths.main : undefined),
    ...(rig.backup && strengths.backup
      ? { backup: backupLine(rig, parts.includes("backup") ? strengths.backup : undefined, strengths.connections) }
      : {}),
    leash: { length: rig.leash.length, material: material(rig.leash.stock), strength: strengths.leash },
    ring: ring(rig, strengths.ring),
    walker: { mass: rig.walker.mass, at: whatIf.at, tieIn: rig.walker.tieIn, lateral: rig.walker.lateral },
    start: standing ? "standing" : "hanging",
    ...(standing ? { letGo: loses ? LET_GO_CUT : LET_GO_FALL } : {}),
    ...(whatIf.kind === "mainFails" ? { cut: { at: whatIf.cutAt, time: failTime(whatIf, options) } } : {}),
    ...(leg ? { legFailure: { anchor: leg.anchor, leg: leg.leg, time: failTime(leg, options) } } : {}),
    ...(Object.keys(anchors).length > 0 ? { anchors } : {}),
    ...(rig.ground.length > 1 ? { ground: rig.ground } : {}),
    duration: options.duration ?? defaultDuration(rig),
  };
}

function failTime(whatIf: Exclude<WhatIf, { kind: "leashFall" }>, options: ProblemOptions): number {
  if (options.cutTime !== undefined) return options.cutTime;
  if (whatIf.walker === "caught") throw new Error("What fails during a catch needs the time of the catch.");
  return CUT_TIME;
}

/**
 * Simulated time that lets the deepest drop end and swing back [s]: twice the free fall to the bottom of the slack backup
 * and the leash, and two seconds; at least 4, at most 15.
 */
export function defaultDuration(rig: Rig): number {
  const slack = rig.backup?.slack ?? 0;
  const depth = 0.5 * chord(rig) * Math.sqrt((1 + slack) ** 2 - 1) + 2 * rig.leash.length + rig.walker.tieIn;
  const wanted = 2 * Math.sqrt((2 * depth) / GRAVITY) + 2;
  return Math.min(15, Math.max(4, Math.ceil(2 * wanted) / 2));
}

export const material = (stock: LineStock): Material => ({
  mass: stock.mass,
  curve: stock.curve,
  branches: stock.branches,
});

function mainLine(rig: Rig, breaking: LineBreaking | undefined): MainLine {
  const slip = {
    ...(rig.main.endA.slipLoad === undefined ? {} : { A: rig.main.endA.slipLoad }),
    ...(rig.main.endB.slipLoad === undefined ? {} : { B: rig.main.endB.slipLoad }),
  };
  return {
    pretension: rig.main.pretension,
    ...make(rig.main.sections, mainSectionLengths(rig), breaking),
    ...(Object.keys(slip).length > 0 ? { slip } : {}),
  };
}

function backupLine(rig: Rig, breaking: LineBreaking | undefined, strengths: readonly number[]): BackupLine {
  const backup = rig.backup!;
  const of = (kind: "connection" | "tape"): Connection[] =>
    backup.connections.flatMap((part, i) => (part.kind === kind ? [{ at: part.at, strength: strengths[i]! }] : []));
  return {
    slack: backupNaturalLength(rig) / chord(rig) - 1,
    ...make(backup.sections, backupSectionLengths(rig), breaking),
    connections: of("connection"),
    tapes: of("tape"),
  };
}

function make(
  sections: readonly WebbingSection[],
  lengths: readonly number[],
  breaking: LineBreaking | undefined,
): LineMake {
  const total = lengths.reduce((sum, length) => sum + length, 0);
  let reached = 0;
  const parts: Section[] = sections.map((section, i) => {
    reached += lengths[i]!;
    return { to: i === sections.length - 1 ? 1 : reached / total, material: material(section.stock) };
  });
  return {
    ...(parts.length === 1 ? { material: parts[0]!.material } : { sections: parts }),
    ...(breaking ? { strength: breaking.strength, weakZones: breaking.zones } : {}),
  };
}

/** Rings hang on one leash: their masses add; the tightest one meets the line first, the smoothest one slides furthest. */
function ring(rig: Rig, strength: number): Problem["ring"] {
  return {
    mass: rig.rings.reduce((sum, one) => sum + one.mass, 0),
    clearance: Math.min(...rig.rings.map((one) => one.clearance)),
    friction: Math.min(...rig.rings.map((one) => one.friction)),
    strength,
  };
}

function anchor(end: "A" | "B", side: AnchorSide): { readonly A?: Anchor; readonly B?: Anchor } {
  return side.stiffness === undefined ? {} : { [end]: { stiffness: side.stiffness } };
}
