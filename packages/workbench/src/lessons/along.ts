/** Strength of a lesson's main line along its length, and what it carries at a moment. Knows no React. */
import type { Recording } from "@secondline/engine";
import { rigStrengths } from "@secondline/scenarios";
import type { LessonRun } from "./facts.ts";

export interface AlongLine {
  /** Place from A [natural m], and what 95 % of such webbing holds [N]. */
  readonly zones: readonly { readonly from: number; readonly to: number; readonly strength5: number }[];
  readonly length: number;
  /** End of the scale [N]. */
  readonly top: number;
  readonly mark?: {
    readonly from: number;
    readonly to: number;
    readonly middle: number;
    readonly strength5: number;
  };
}

const known = new WeakMap<LessonRun, AlongLine>();

export function alongLine(run: LessonRun): AlongLine {
  const before = known.get(run);
  if (before) return before;
  const { parts, mainLength: length } = rigStrengths(run.assessed.rig);
  const zones = parts.find(({ id }) => id === "main")?.zones ?? [];
  const marked = zones.find(({ reason }) => reason === "clamp mark");
  const made: AlongLine = {
    zones: zones.map(({ from, to, strength5 }) => ({ from, to, strength5 })),
    length,
    top: 5000 * Math.ceil(Math.max(...zones.map(({ strength5 }) => strength5)) / 5000),
    ...(marked
      ? {
          mark: {
            from: marked.from,
            to: marked.to,
            middle: (marked.from + marked.to) / 2,
            strength5: marked.strength5,
          },
        }
      : {}),
  };
  known.set(run, made);
  return made;
}

/** The tension of every element of the main line, from A, in the frame of a moment [N]; parted elements carry nothing. */
export function carriedAt(
  { frames }: Pick<Recording, "frames">,
  time: number,
  length: number,
): readonly { readonly from: number; readonly to: number; readonly force: number }[] {
  const { rate, count, mainNodes, backupNodes, tensions, fractions } = frames;
  const frame = Math.min(count - 1, Math.max(0, Math.round(time * rate)));
  const start = frame * (mainNodes - 1 + Math.max(0, backupNodes - 1));
  return Array.from({ length: mainNodes - 1 }, (_, i) => {
    const force = tensions[start + i]!;
    return {
      from: fractions[i]! * length,
      to: fractions[i + 1]! * length,
      force: Number.isNaN(force) ? 0 : force,
    };
  });
}
