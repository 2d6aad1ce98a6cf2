/** What holds the walker, read off a recording: never a line that has given way. */
import type { Recording } from "@secondline/engine";
import type { Catcher, LostBecause } from "../facts/runFacts.ts";
import { fate } from "./fate.ts";

/** Around the lowest point, this long to either side, lines are asked what they carry [s]. */
const TIME_AROUND_LOWEST = 0.25;
/** A line that carries less than this share of both does not hold the walker [-]. */
const LEAST_HELD_SHARE = 0.1;

export interface Catch {
  readonly caughtBy: Catcher;
  readonly lostBecause?: LostBecause;
}

export function catchOf(recording: Recording): Catch {
  if (fate(recording) !== "caught") return { caughtBy: "nothing", lostBecause: lostBecause(recording) };
  const main = holds(recording, "main");
  const backup = holds(recording, "backup");
  if (!main && !backup) return { caughtBy: "remains" };
  if (!main) return { caughtBy: "backup" };
  if (!backup) return { caughtBy: "main" };
  const shares = [pullOf(recording, "main"), pullOf(recording, "backup")] as const;
  const all = shares[0] + shares[1];
  if (shares[1] < LEAST_HELD_SHARE * all) return { caughtBy: "main" };
  return { caughtBy: shares[0] < LEAST_HELD_SHARE * all ? "backup" : "both" };
}

/** Whether a line is there, and whole from anchor to anchor to the end of the run. */
function holds({ problem, events }: Recording, line: "main" | "backup"): boolean {
  if (line === "backup" && !problem.backup) return false;
  return !events.some(({ kind, part }) => (kind === "cut" || kind === "break") && part === line);
}

/** Mean pull of a line's two ends around the lowest point [N]. */
function pullOf({ signals, rate, walker }: Recording, line: "main" | "backup"): number {
  const [a, b] = [signals[`${line}A`], signals[`${line}B`]];
  const from = Math.max(0, Math.round((walker.lowestTime - TIME_AROUND_LOWEST) * rate));
  const to = Math.min(a.length, Math.round((walker.lowestTime + TIME_AROUND_LOWEST) * rate));
  let sum = 0;
  for (let i = from; i < to; i++) sum += a[i]! + b[i]!;
  return to > from ? sum / (2 * (to - from)) : 0;
}

function lostBecause({ events }: Recording): LostBecause {
  const first = events.find(
    ({ kind, part }) => kind === "ground" || (kind === "break" && (part === "leash" || part === "ring")),
  );
  if (!first) return "freeFall";
  return first.kind === "ground" ? "ground" : (first.part as "leash" | "ring");
}
