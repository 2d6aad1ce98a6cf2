import { expect, it } from "vitest";
import { assessRig, rigStrengths, runWhatIf } from "../src/index.ts";
import { overloadedLines, webbingLoads } from "../src/run/loads.ts";
import { finish } from "./finish.ts";
import { testRig } from "./testRig.ts";

/** Long, and run for long: more than a recording has room for at the rate at which tensions are read. */
const long = { ...testRig, span: 150, ground: [[0, -80] as const, [150, -80] as const] };

it("reads the webbing of a line of 150 m through the same filter as its ends", () => {
  const whatIf = { kind: "mainFails", at: 0.5, cutAt: 0, walker: "hanging" } as const;
  const { outcome, recording } = finish(runWhatIf(assessRig(long), whatIf, { accuracy: "standard", duration: 10 }));
  expect(outcome.trouble).toBeUndefined();
  const { elementPeaks, peaks, frames } = recording!;
  expect(frames.rate).toBeLessThan(600);
  const strengths = rigStrengths(long);
  const zones = (id: string) => strengths.parts.find((part) => part.id === id)!.zones!;
  const main = webbingLoads(elementPeaks.main, zones("main"), strengths.mainLength);
  const backup = webbingLoads(elementPeaks.backup, zones("backup"), strengths.backupLength);
  // The end element carries what the end does; elements are read less often than ends.
  for (const [load, end] of [
    [main.at(-1)!.load, peaks.mainB],
    [backup[0]!.load, peaks.backupA],
    [backup.at(-1)!.load, peaks.backupB],
  ] as const) {
    expect(Math.abs(load / end.cfc60 - 1)).toBeLessThan(0.03);
  }
  // The same load decides whether webbing parts.
  const most = Math.max(...main.map(({ load }) => load), ...backup.map(({ load }) => load));
  const holding = (strength: number) => ({
    ...strengths,
    parts: strengths.parts.map((part) =>
      part.zones ? { ...part, zones: part.zones.map((zone) => ({ ...zone, strength })) } : part,
    ),
  });
  expect(overloadedLines(recording!, holding(1.01 * most))).toEqual([]);
  expect(overloadedLines(recording!, holding(0.99 * most))).not.toEqual([]);
});
