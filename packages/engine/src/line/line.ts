/** One line made ready to compute: elements of one or several materials, nodes with masses, and where it lies in the kernel's memory. */
import type { LineKernel } from "../kernel/lineKernel.ts";
import { COLUMN, COLUMNS, HEAD, HEAD_SIZE, pitchFor, RUN, runSize, TINY } from "../kernel/lineLayout.ts";
import type { LineMake, Material } from "../problem.ts";
import { branchStiffness, maxwellStep } from "./maxwell.ts";
import { buildMesh, type NodePlace, type SizeOf } from "./mesh.ts";
import { type TensionCurve, tensionCurve } from "./tensionCurve.ts";

/** A stretch of a line of one material. */
export interface Run {
  readonly first: number;
  readonly last: number;
  readonly material: Material;
  readonly curve: TensionCurve;
  /** ΣE of the material's branches [N]. */
  readonly stiffness: number;
}

export interface Line {
  readonly name: "main" | "backup";
  readonly nodes: number;
  readonly elements: number;
  readonly naturalLength: number;
  /** Fraction of natural length of every node. */
  readonly fractions: Float64Array;
  readonly runs: readonly Run[];
  /** Natural length of every element; 0 for the seam of a planned cut [m]. */
  readonly lengths: Float64Array;
  /** Mass of every node [kg]. */
  readonly masses: Float64Array;
  /** Strength of every element [N]. */
  readonly strengths: Float64Array;
  /** First node of the seam where the line will be cut; −1: none. */
  readonly seam: number;
  readonly nodeAt: (fraction: number) => number;
  /** Where the line lies in the kernel's memory. */
  readonly base: number;
  readonly pitch: number;
  readonly runsAt: number;
  readonly runPitch: number;
  /** Where what the kernel is told of the line lies (see `HEAD`). */
  readonly head: number;
}

export function sectionsOf(make: LineMake): readonly { to: number; material: Material }[] {
  if (make.sections) return make.sections;
  if (!make.material) throw new Error("a line needs a material or sections");
  return [{ to: 1, material: make.material }];
}

/** The run of elements to which an element belongs. */
export const runIndexAt = ({ runs }: Pick<Line, "runs">, e: number): number =>
  runs.findIndex(({ first, last }) => e >= first && e < last);

/** A line by itself, evenly divided, at the start of a kernel's memory. */
export function plainLine(make: LineMake, naturalLength: number, elements: number): Line {
  return placeLine(draftLine("main", make, naturalLength, naturalLength / elements, [], undefined), 0);
}

/** Numbers of kernel memory up to the end of a line. */
export const endOf = (line: Line): number => line.head + HEAD_SIZE;

/** An end element below this share of the element size is there only because the walker stands so close to an anchor [-]. */
const SHORT_END_SHARE = 0.39;

type LineDraft = Omit<Line, "base" | "pitch" | "runsAt" | "runPitch" | "head">;

export function draftLine(
  name: "main" | "backup",
  make: LineMake,
  naturalLength: number,
  size: number,
  places: readonly NodePlace[],
  split: number | undefined,
  sizeOf?: SizeOf,
): LineDraft {
  const sections = sectionsOf(make);
  const edges = [
    ...sections.slice(0, -1).map(({ to }) => to),
    ...(make.weakZones ?? []).flatMap(({ from, to }) => [from, to]),
  ];
  const inner = [...places, ...edges.map((at) => ({ at, rank: 3 }))].filter(({ at }) => at > 0 && at < 1);
  const mesh = buildMesh(naturalLength, size, inner, split, sizeOf);
  const { fractions } = mesh;
  const elements = fractions.length - 1;
  const lengths = Float64Array.from(
    { length: elements },
    (_, e) => (fractions[e + 1]! - fractions[e]!) * naturalLength,
  );
  const seam = split === undefined ? -1 : lengths.indexOf(0);
  const materials = Array.from({ length: elements }, (_, e) => materialAt(sections, middle(fractions, e)));
  return {
    name,
    nodes: elements + 1,
    elements,
    naturalLength,
    fractions,
    lengths,
    seam,
    nodeAt: mesh.nodeAt,
    runs: groupRuns(materials),
    masses: lumpMasses(materials, lengths, size),
    strengths: Float64Array.from({ length: elements }, (_, e) => strengthAt(make, fractions[e]!, fractions[e + 1]!)),
  };
}

const middle = (fractions: Float64Array, e: number): number => 0.5 * (fractions[e]! + fractions[e + 1]!);

function materialAt(sections: readonly { to: number; material: Material }[], at: number): Material {
  return (sections.find(({ to }) => at <= to) ?? sections.at(-1)!).material;
}

/** An element takes the least strength of any weak zone that covers more of the element than rounding. */
function strengthAt(make: LineMake, from: number, to: number): number {
  const zones = (make.weakZones ?? []).filter((zone) => Math.min(zone.to, to) - Math.max(zone.from, from) > 1e-9);
  return Math.min(make.strength ?? Number.POSITIVE_INFINITY, ...zones.map(({ strength }) => strength));
}

function groupRuns(materials: readonly Material[]): Run[] {
  const runs: Run[] = [];
  const curves = new Map<Material, TensionCurve>();
  for (let first = 0; first < materials.length; ) {
    const material = materials[first]!;
    let last = first + 1;
    while (last < materials.length && materials[last] === material) last++;
    const curve = curves.get(material) ?? tensionCurve(material.curve);
    curves.set(material, curve);
    runs.push({ first, last, material, curve, stiffness: branchStiffness(material.branches) });
    first = last;
  }
  return runs;
}

/** Lengths of a line's elements [m]. Elements of an evenly divided stretch get one common number: their own lengths differ by rounding. */
function evenLengths({ runs, lengths }: Pick<Line, "runs" | "lengths">): Float64Array {
  const even = lengths.slice();
  for (const { first, last } of runs) {
    for (let e = first + 1; e < last; e++) if (sameLength(even[e - 1]!, even[e]!)) even[e] = even[e - 1]!;
  }
  return even;
}
const sameLength = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(a, b);

/**
 * Half of each element's mass at each of its nodes; at the ends at least as much as an even element of this size has [kg]. What
 * that adds beside a short element lies in an anchor, and is some grams when the line comes off it.
 */
function lumpMasses(materials: readonly Material[], lengths: Float64Array, size: number): Float64Array {
  const masses = new Float64Array(materials.length + 1);
  for (let e = 0; e < materials.length; e++) {
    const half = 0.5 * materials[e]!.mass * lengths[e]!;
    masses[e] = masses[e]! + half;
    masses[e + 1] = masses[e + 1]! + half;
  }
  const last = materials.length - 1;
  if (lengths[0]! < SHORT_END_SHARE * size) masses[0] = 0.5 * materials[0]!.mass * size;
  if (lengths[last]! < SHORT_END_SHARE * size) masses[last + 1] = 0.5 * materials[last]!.mass * size;
  return masses;
}

export function placeLine(draft: LineDraft, base: number): Line {
  const pitch = pitchFor(draft.nodes);
  const size = runSize(Math.max(...draft.runs.map(({ curve }) => curve.cubics.length / 5)));
  const runPitch = size + (size & 1);
  const runsAt = base + COLUMNS * pitch;
  return { ...draft, base, pitch, runsAt, runPitch, head: runsAt + draft.runs.length * runPitch };
}

/**
 * Longest stable step of a line, 2/ω of its fastest mode [s]: for two equal masses m on springs K/h it is h·√(μ/K) at the
 * instantaneous stiffness K = largest slow-pull slope + ΣE; Gershgorin's bound on every node where elements differ.
 */
export function stepLimit(line: Line): number {
  let fastest = 0;
  const stiffness = new Float64Array(line.elements);
  const lengths = evenLengths(line);
  for (const run of line.runs) {
    for (let e = run.first; e < run.last; e++) {
      if (lengths[e]! > 0) stiffness[e] = (run.curve.maxSlope + run.stiffness) / lengths[e]!;
    }
  }
  for (let i = 0; i < line.nodes; i++) {
    const around = (i > 0 ? stiffness[i - 1]! : 0) + (i < line.elements ? stiffness[i]! : 0);
    fastest = Math.max(fastest, (2 * around) / line.masses[i]!);
  }
  return 2 / Math.sqrt(fastest);
}

/** Writes masses, lengths, strengths and the runs' coefficients of a line into the kernel's memory. */
export function loadLine(line: Line, kernel: LineKernel, step: number): void {
  const m = kernel.memory;
  const { base, pitch, head } = line;
  m[head + HEAD.base] = base;
  m[head + HEAD.pitch] = pitch;
  m[head + HEAD.runs] = line.runsAt;
  m[head + HEAD.runCount] = line.runs.length;
  m[head + HEAD.runPitch] = line.runPitch;
  m[head + HEAD.step] = step;
  m[head + HEAD.breakable] = line.strengths.some(Number.isFinite) ? 1 : 0;
  for (let i = 0; i < line.nodes; i++) m[base + COLUMN.IM * pitch + i] = 1 / line.masses[i]!;
  const even = evenLengths(line);
  for (let e = 0; e < line.elements; e++) {
    const length = line.lengths[e]!;
    m[base + COLUMN.IL * pitch + e] = length > 0 ? 1 / length : 0;
    m[base + COLUMN.H * pitch + e] = 0.5 * length;
    const turn = length > 0 ? 0.5 * (step / even[e]!) : 0;
    m[base + COLUMN.Q * pitch + e] = turn * turn;
    m[base + COLUMN.S * pitch + e] = line.strengths[e]!;
  }
  for (const [k, run] of line.runs.entries()) {
    const at = line.runsAt + k * line.runPitch;
    const coefficients = maxwellStep(run.material.branches, step);
    m[at + RUN.first] = run.first;
    m[at + RUN.last] = run.last;
    m[at + RUN.branches] = coefficients.count;
    m[at + RUN.endSlope] = run.curve.endSlope;
    m[at + RUN.end] = run.curve.end;
    m[at + RUN.cubics] = run.curve.cubics.length / 5;
    m[at + RUN.stiffnessSum] = coefficients.stiffness.reduce((sum, b) => sum + b, 0);
    m[at + RUN.one] = 1;
    m[at + RUN.half] = 0.5;
    m[at + RUN.tiny] = TINY;
    m.set(coefficients.decay, at + RUN.decay);
    m.set(coefficients.stiffness, at + RUN.stiffness);
    m.set(coefficients.release, at + RUN.release);
    m.set(coefficients.compliance, at + RUN.compliance);
    m.set(run.curve.cubics, at + RUN.table);
  }
}
