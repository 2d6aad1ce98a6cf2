/**
 * Over every what-if of every demo rig, and these rigs weakened part by part: no sentence names as catcher a line that gave way.
 * Which lines did is read off the recording, not off the facts that the sentences are made of.
 */
import { type PartId, partIds, type Rig } from "@secondline/rig";
import { assessRig, rigStrengths, type WhatIf, type WhatIfOutcome, whatIfKey, whatIfSet } from "@secondline/scenarios";
import { englishWords as words } from "@secondline/words";
import { describe, expect, it } from "vitest";
import { demoRigs } from "../support/demoRigs.ts";
import { judged, runOf, studyOf } from "../support/run.ts";

const setOf = (rig: Rig, size: "quick" | "full") => whatIfSet({ rig, weakPlaces: rigStrengths(rig).weakPlaces, size });

/** What a sentence names as catcher. */
function namedIn(rig: Rig, run: WhatIfOutcome): readonly ("main" | "backup")[] {
  const said = [...words.story(rig, run).slice(0, 1), words.fate(rig, run).split(";")[0]!];
  return said.flatMap((text) => {
    const caught = /caught/i.test(text);
    if (!caught || /nothing/i.test(text)) return [];
    if (/main line and backup together/i.test(text)) return ["main", "backup"] as const;
    if (/the main line/i.test(text)) return ["main"] as const;
    return /the backup/i.test(text) ? (["backup"] as const) : [];
  });
}

/** Own judgement makes a part hold less than half of it, as somebody may who has looked at it. */
const WEAK = 0.45;
const WEAKENED: readonly PartId[] = ["main", "endA", "backup", "leash", "anchorA.points.0", "connection.0"];

describe.each(demoRigs)("%s", (_, rig: Rig) => {
  it("names no line that the what-if itself takes away, in any of its set", () => {
    const taking = setOf(rig, "full").filter(({ kind }) => kind === "mainFails");
    expect(taking.length).toBeGreaterThan(10);
    for (const run of studyOf(rig, { accuracy: "quick", whatIfs: taking }).whatIfs) {
      expect(run.ok).toBe(true);
      expect(namedIn(rig, run), run.key).not.toContain("main");
    }
    // A whole set: a bound for a busy machine.
  }, 240_000);

  it.each([undefined, ...WEAKENED.filter((part) => partIds(rig).includes(part))])(
    "names no line that gave way, with %s weak",
    (part) => {
      const assessed = part ? judged(rig, [{ part, factor: WEAK, reason: "weak" }]) : assessRig(rig);
      // Without repetition in what can happen: falls, either end failing in every pose, a leg.
      const events: readonly WhatIf[] = setOf(assessed.rig, "quick").filter((_each, i) => i % 2 === 0);
      for (const event of events) {
        const { outcome, recording } = runOf(assessed, event, { accuracy: "quick" });
        if (!outcome.ok) continue;
        const gone = recording!.events
          .filter(({ kind }) => kind === "cut" || kind === "break")
          .map((one) => one.part as string);
        for (const line of namedIn(assessed.rig, outcome)) {
          expect(gone, `${whatIfKey(event)}: ${words.story(assessed.rig, outcome).join(" ")}`).not.toContain(line);
        }
        if (gone.includes("leash")) expect(namedIn(assessed.rig, outcome)).toEqual([]);
      }
    },
  );
});
