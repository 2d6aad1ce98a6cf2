/** Makes the problem that the engine solves from a rig and a what-if. */
import {
  type Anchor,
  type BackupLine,
  type Connection,
  GRAVITY,
  type LineMake,
  type MainLine,
  type Material,
  type Problem,
  type Section,
} from "@secondline/engine";
import {
  type AnchorSide,
  backupNaturalLength,
  backupSectionLengths,
  chord,
  type LineName,
  type LineStock,
  mainSectionLengths,
  type Rig,
  type WebbingSection,
} from "@secondline/rig";
import type { KnownBefore } from "../events/eventKind.ts";
import { problemPart, type WhatIf, whatIfKey } from "../events/registry.ts";
import { nineDigits } from "../nineDigits.ts";
import type { BreakingStrengths, LineBreaking } from "../strengths/breakingStrengths.ts";
import type { DemandStrengths } from "../strengths/demandStrengths.ts";
import { anchorLegs } from "./anchorLegs.ts";
import { hangersOf, manyfold } from "./hangers.ts";

/**
 * How much lower somebody's feet follow a line that falls away, from the bent knees of a balance [m]. Assumed; anything up to 0.4 m
 * gives the same loads. Without an end they would push on the falling line, with more work than legs can do.
 */
const FEET_REACH = 0.2;

export interface ProblemOptions extends KnownBefore {
  /** Simulated time [s]; default: long enough for the deepest drop, see `defaultDuration`. */
  readonly duration?: number;
  /** Factor on the time in which the feet let go [-]. */
  readonly letGo?: number;
  /** Lines whose webbing and ends part above their strength; default: both. */
  readonly linesThatPart?: readonly LineName[];
}

/** The engine's problem for one what-if. Parts give way at the strengths given, and at those that the event itself sets. */
export function toProblem(
  rig: Rig,
  whatIf: WhatIf,
  strengths: BreakingStrengths,
  options: ProblemOptions = {},
): Problem {
  const part = problemPart(whatIf, rig, options);
  const holds = weakened(strengths, part.strengths);
  const lines = options.linesThatPart ?? ["main", "backup"];
  const parts = (line: LineName) => lines.includes(line) || part.strengths?.[line] !== undefined;
  const leg = part.legFailure;
  const { mass, count, share } = hangersOf(rig, part.beside);
  const anchors = {
    ...anchor("A", rig.anchorA),
    ...anchor("B", rig.anchorB),
    ...(leg ? { [leg.anchor]: { legs: anchorLegs(rig, leg.anchor, holds.points[leg.anchor]) } } : {}),
  };
  return nineDigits<Problem>({
    name: `${rig.name}: ${whatIfKey(whatIf)}`,
    span: rig.span,
    rise: rig.rise,
    main: mainLine(rig, parts("main") ? holds.main : undefined),
    ...(rig.backup && holds.backup
      ? { backup: backupLine(rig, parts("backup") ? holds.backup : undefined, holds.connections) }
      : {}),
    leash: {
      length: rig.leash.length,
      material: manyfold(material(rig.leash.stock), count),
      strength: holds.leash / share,
    },
    ring: ring(rig, holds.ring / share, count),
    walker: { mass, at: whatIf.at, tieIn: rig.walker.tieIn, lateral: rig.walker.lateral },
    start: part.standing ? "standing" : "hanging",
    ...(part.letGo === undefined ? {} : { letGo: part.letGo * (options.letGo ?? 1), feetReach: FEET_REACH }),
    ...(part.cut ? { cut: part.cut } : {}),
    ...(leg ? { legFailure: leg } : {}),
    ...(Object.keys(anchors).length > 0 ? { anchors } : {}),
    ...(rig.ground.length > 1 ? { ground: rig.ground } : {}),
    duration: options.duration ?? defaultDuration(rig) + (part.failsAt ?? 0),
  });
}

/** The lesser of what parts hold and of what the event lets them hold. */
function weakened(strengths: BreakingStrengths, event: Partial<DemandStrengths> = {}): BreakingStrengths {
  const line = (own: LineBreaking, other: LineBreaking | undefined): LineBreaking =>
    other === undefined
      ? own
      : { strength: Math.min(own.strength, other.strength), zones: [...own.zones, ...other.zones] };
  return {
    ...strengths,
    main: line(strengths.main, event.main),
    ...(strengths.backup ? { backup: line(strengths.backup, event.backup) } : {}),
    leash: Math.min(strengths.leash, event.leash ?? strengths.leash),
    ring: Math.min(strengths.ring, event.ring ?? strengths.ring),
    connections: strengths.connections.map((own, i) => Math.min(own, event.connections?.[i] ?? own)),
  };
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
function ring(rig: Rig, strength: number, count: number): Problem["ring"] {
  return {
    mass: count * rig.rings.reduce((sum, one) => sum + one.mass, 0),
    clearance: Math.min(...rig.rings.map((one) => one.clearance)),
    friction: Math.min(...rig.rings.map((one) => one.friction)),
    strength,
  };
}

function anchor(end: "A" | "B", side: AnchorSide): { readonly A?: Anchor; readonly B?: Anchor } {
  return side.stiffness === undefined ? {} : { [end]: { stiffness: side.stiffness } };
}
