/** Recordings of a load cell that nobody made: the engine's own force with noise, written as a file. Labelled synthetic. */

import { seededRandom } from "@secondline/statistics";
import type { Assessed, Channel, WhatIf } from "../src/index.ts";
import { modelSignals, RECORDING_FORMAT } from "../src/index.ts";
import { finish } from "./finish.ts";

export interface SyntheticFall {
  /** Seconds from the first sample [s], and forces [N]. */
  readonly rows: readonly (readonly [time: number, force: number])[];
  readonly channel: Channel;
  readonly event: string;
}

/** The fall as the rig says it, `lead` seconds after the first sample, at 2000 samples a second, with noise of 10 N. */
export function syntheticFall(
  assessed: Assessed,
  event: WhatIf,
  key: string,
  channel: Channel,
  lead = 1.5,
): SyntheticFall {
  const none = { mass: 0, place: 0, letGo: 0, pretension: 0, stiffness: 0, backupStiffness: 0, leashStiffness: 0 };
  const spreads = { ...none, damping: 0, slack: 0, leashLength: 0, friction: 0, moment: 0 };
  const { signals } = finish(modelSignals(assessed, { event, channel, draws: 1, accuracy: "quick", spreads }));
  const { force, rate } = signals[0]!;
  const noise = seededRandom(5);
  const step = 1 / 2000;
  const rows = Array.from({ length: Math.floor((force.length / rate + lead) / step) }, (_, k) => {
    const at = (k * step - lead) * rate;
    const pulled = force[Math.max(0, Math.min(force.length - 1, Math.round(at)))]!;
    return [k * step, pulled + 10 * noise.normal()] as const;
  });
  return { rows, channel, event: key };
}

export interface WrittenAs {
  readonly head?: readonly string[];
  readonly columns?: string;
  readonly time?: (seconds: number) => string;
  readonly force?: (newton: number, time: number) => string;
  readonly keep?: (time: number) => boolean;
}

export function csvOf({ rows, channel, event }: SyntheticFall, as: WrittenAs = {}): string {
  const { time = (s) => s.toFixed(4), force = (n) => (n / 1000).toFixed(4), keep = () => true } = as;
  const head = as.head ?? [
    `# format: ${RECORDING_FORMAT}`,
    `# channel: ${channel}`,
    `# what-if: ${event}`,
    "# source: synthetic: the engine's own force with noise of 10 N",
  ];
  const parted = as.columns?.includes(";") ? ";" : ",";
  const lines = rows.filter(([t]) => keep(t)).map(([t, n]) => `${time(t)}${parted}${force(n, t)}`);
  return `${[...head, as.columns ?? "time [s],force [kN]", ...lines].join("\n")}\n`;
}
