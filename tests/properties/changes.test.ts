/** Changes whose direction everybody knows. */
import type { Rated, Rig } from "@secondline/rig";
import { EVENT_CLASSES } from "@secondline/scenarios";
import { describe, expect, it } from "vitest";
import { demoRig, demoRigs } from "../support/demoRigs.ts";
import { foundOf, judged, outcomeOf, studyOf } from "../support/run.ts";

/** From the best to the worst that may be said. */
const rank = (verdict: string) => ["holds", "notLoaded", "open", "thin", "fails"].indexOf(verdict);

const stronger = (rated: Rated, by: number): Rated => ({ ...rated, strength: rated.strength * by });

/** Every part holds more, but for the tapes: they are made to part. */
function strengthen(rig: Rig, by: number): Rig {
  const part = <T extends { readonly rated: Rated }>(one: T): T => ({ ...one, rated: stronger(one.rated, by) });
  const stock = <T extends { readonly stock: { readonly rated: Rated } }>(one: T): T => ({
    ...one,
    stock: part(one.stock),
  });
  const line = <T extends Rig["main"] | NonNullable<Rig["backup"]>>(one: T): T => ({
    ...one,
    sections: one.sections.map(stock),
    endA: part(one.endA),
    endB: part(one.endB),
  });
  const side = (one: Rig["anchorA"]) => ({ ...one, points: one.points.map(part), hardware: one.hardware.map(part) });
  return {
    ...rig,
    anchorA: side(rig.anchorA),
    anchorB: side(rig.anchorB),
    main: line(rig.main),
    ...(rig.backup
      ? {
          backup: {
            ...line(rig.backup),
            connections: rig.backup.connections.map((one) => (one.kind === "tape" ? one : part(one))),
          },
        }
      : {}),
    rings: rig.rings.map(part),
    leash: stock(rig.leash),
    harness: part(rig.harness),
  };
}

describe.each(demoRigs)("%s", (_, rig: Rig) => {
  const options = {
    accuracy: "quick",
    whatIfs: [
      { kind: "leashFall", at: 0.5 },
      { kind: "mainFails", at: 0.5, cutAt: 0, walker: "hanging" },
    ],
  } as const;
  const before = studyOf(rig, options);

  it("keeps at least so much more margin as its parts are stronger", () => {
    const after = studyOf(strengthen(rig, 1.3), options);
    for (const part of before.parts) {
      const now = after.parts.find((one) => one.id === part.id)!;
      for (const name of EVENT_CLASSES) {
        const [little, much] = [part.byClass[name], now.byClass[name]];
        // More where a factor hangs on how much of its strength a part was asked for, as that of a clamp mark does.
        if (little) expect(much!.margin / little.margin).toBeGreaterThan(1.3 - 1e-6);
      }
    }
  });

  it("gets no better verdict, of the whole or of any part, when more is required of it", () => {
    const ask = (value: number) => ({
      ...rig,
      requiredFactor: { ...rig.requiredFactor, value },
      requiredAfterFailure: value,
    });
    const [little, much] = [studyOf(ask(1), options), studyOf(ask(5), options)];
    expect(rank(much.verdict)).toBeGreaterThanOrEqual(rank(little.verdict));
    for (const [i, part] of much.parts.entries()) {
      expect(rank(part.verdict)).toBeGreaterThanOrEqual(rank(little.parts[i]!.verdict));
      for (const name of EVENT_CLASSES) {
        expect(part.byClass[name]?.margin).toBe(little.parts[i]!.byClass[name]?.margin);
      }
    }
  });

  it("gets no better verdict with a weaker part", () => {
    for (const part of ["leash", "main", "backup"] as const) {
      const { outcome } = foundOf(judged(rig, [{ part, factor: 0.3, reason: "weak" }]), options);
      const [now, then] = [outcome, before].map((one) => one.parts.find(({ id }) => id === part)!);
      expect(rank(now!.verdict)).toBeGreaterThanOrEqual(rank(then!.verdict));
      expect(rank(outcome.verdict)).toBeGreaterThanOrEqual(rank(before.verdict));
    }
  });

  it("pulls harder on a heavier walker", () => {
    const of = (mass: number) =>
      outcomeOf({ ...rig, walker: { ...rig.walker, mass } }, { kind: "leashFall", at: 0.5 }, { accuracy: "quick" });
    const [light, heavy] = [of(60), of(100)];
    expect(heavy.peaks.leash).toBeGreaterThan(light.peaks.leash);
    expect(heavy.drop).toBeGreaterThan(light.drop);
  });

  it("creates no energy in a catch on the backup", () => {
    const { recording, drop } = outcomeOf(rig, { kind: "mainFails", at: 0.5, cutAt: 0, walker: "hanging" });
    expect(recording.energy.gain).toBeLessThan(1e-3 * rig.walker.mass * 9.80665 * drop);
  });
});

describe("the sound rig", () => {
  const rig = demoRig("sound-rig.json");
  const fails = { kind: "mainFails", at: 0.5, cutAt: 0, walker: "hanging" } as const;

  it("drops the walker deeper when its connections are taken out", () => {
    const without = { ...rig, backup: { ...rig.backup!, connections: [] } };
    expect(outcomeOf(without, fails).drop).toBeGreaterThan(1.2 * outcomeOf(rig, fails).drop);
  });

  it("drops the walker deeper on a looser backup", () => {
    const looser = { ...rig, backup: { ...rig.backup!, slack: rig.backup!.slack + 0.05 } };
    expect(outcomeOf(looser, fails).drop).toBeGreaterThan(outcomeOf(rig, fails).drop);
  });
});
