/**
 * Sees to it that a part which an event makes give way does. It is weak at the load that it got in the event before; but a weak place has
 * nodes of its own, and on another mesh a catch may load it less. What it gets on that mesh is known once it has held, so that the same
 * run, made again with a part as weak as that, cannot but part there. Else the loads that follow on the failure would be missing.
 */
import type { Recording } from "@secondline/engine";
import type { Rig } from "@secondline/rig";
import { problemPart, type WhatIf } from "../events/registry.ts";
import type { RigStrengths } from "../strengths/rigStrengths.ts";
import { breaksOf, readRun } from "./readRun.ts";
import type { RunToEndOptions, SolvedRun } from "./runToEnd.ts";

/** Runs an event with `solve`, and once more if the part that is to give way in it held. */
export function* untilItGivesWay(
  rig: Rig,
  event: WhatIf,
  strengths: RigStrengths,
  options: RunToEndOptions,
  solve: (options: RunToEndOptions) => Generator<number, SolvedRun, void>,
): Generator<number, SolvedRun, void> {
  const first = yield* solve(options);
  if (!first.ok || !hasHeld(rig, event, strengths, options, first.recording)) return first;
  const before = readRun(rig, event, first.recording, strengths);
  return yield* solve({ ...options, before });
}

/** Whether nothing parted that the event makes weak: a line that parted at another place has parted, and so has a leash with its ring. */
function hasHeld(
  rig: Rig,
  event: WhatIf,
  strengths: RigStrengths,
  options: RunToEndOptions,
  recording: Recording,
): boolean {
  const weak = problemPart(event, rig, options).strengths;
  if (!weak || event.kind !== "givesWay") return false;
  if (weak.connections) return !breaksOf(recording, rig, strengths).some(({ part }) => part === event.part);
  const names: readonly string[] = [...Object.keys(weak), ...(weak.leash === undefined ? [] : ["ring"])];
  return !recording.events.some(({ kind, part }) => kind === "break" && names.includes(part));
}
