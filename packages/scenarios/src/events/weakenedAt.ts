/** Makes a part give way in the catch of an event at the load that it got there. */
import { type PartId, partRef, type Rig } from "@secondline/rig";
import type { RunFacts } from "../facts/runFacts.ts";
import { anchorSide, whenGone } from "../singles/whenGone.ts";
import type { LineBreaking } from "../strengths/breakingStrengths.ts";
import { UNBREAKABLE_STRENGTH } from "../strengths/demandStrengths.ts";
import type { ProblemPart } from "./eventKind.ts";

/** A part gives way a little below the peak that it was seen to get, so that it does [-]. */
const GIVES_WAY_SHARE = 0.98;
/** Length of a line that is weak where it is to part, to either side, as a fraction of the line [-]. */
const WEAK_REACH = 0.004;

/**
 * Makes one part give way at the load that it got in the event before. A part of an anchor takes the end of the line with it
 * that hangs on it; a rock point among several goes as a leg does. What leaves nothing needs no run that shows it: the leash is
 * made to part.
 */
export function weakenedAt(
  rig: Rig,
  part: PartId,
  place: number | undefined,
  before: RunFacts,
  earlier: ProblemPart,
): Partial<ProblemPart> {
  const ref = partRef(part)!;
  const gone = whenGone(rig, part)!;
  const at = (load: number) => GIVES_WAY_SHARE * load;
  const failsAt = Math.max(before.catchTime, earlier.failsAt ?? 0);
  if (ref.kind === "point" && gone.leaves === "otherPoints" && !earlier.legFailure) {
    return { legFailure: { anchor: ref.anchor, leg: ref.index, time: before.catchTime }, failsAt };
  }
  if (gone.leaves === "nothing") return { strengths: { leash: at(before.peaks.leash) }, failsAt };
  switch (ref.kind) {
    case "webbing":
      return { strengths: { [ref.line]: weakAt(place ?? 0.5, at(loadAt(before, ref.line, place ?? 0.5))) }, failsAt };
    case "end":
    case "hardware": {
      const { line, end } = gone.loses!;
      const where = end === "A" ? 0 : 1;
      const name = line === "backup" ? "backup" : "main";
      // The webbing beside an end may carry a little less than the end does.
      const least = Math.min(before.peaks[`${name}${end}`], loadAt(before, name, where));
      return { strengths: { [name]: weakAt(where, at(least)) }, failsAt };
    }
    case "connection":
      return { strengths: { connections: { [ref.index]: at(before.loads[part] ?? 0) } }, failsAt };
    case "ring":
      // The others hold on: nothing changes but which ring carries.
      return { failsAt };
    case "point":
      // A second leg of the same anchor: the end of both lines hangs on what is left, which no run here tells apart.
      return anchorSide(rig, ref.anchor).points.length > 2
        ? { failsAt }
        : { strengths: { leash: at(before.peaks.leash) }, failsAt };
    case "harness":
    case "leash":
      return { strengths: { leash: at(before.peaks.leash) }, failsAt };
  }
}

/** A line that is weak at one place alone [-], [N]. */
function weakAt(place: number, strength: number): LineBreaking {
  const from = Math.max(0, place - WEAK_REACH);
  return { strength: UNBREAKABLE_STRENGTH, zones: [{ from, to: Math.min(1, place + WEAK_REACH), strength }] };
}

/** Largest load of a line at a place [N]. */
function loadAt({ webbing }: RunFacts, line: "main" | "backup", place: number): number {
  const { at, peak } = webbing[line];
  let nearest = 0;
  for (let e = 1; e < at.length; e++) {
    if (Math.abs(at[e]! - place) < Math.abs(at[nearest]! - place)) nearest = e;
  }
  return peak[nearest] ?? 0;
}
