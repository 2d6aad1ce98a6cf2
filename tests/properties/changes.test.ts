/** Changes whose direction everybody knows. */
import type { Rated, Rig } from "@secondline/rig";
import { describe, expect, it } from "vitest";
import { demoRig, demoRigs } from "../support/demoRigs.ts";
import { outcomeOf, studyOf } from "../support/run.ts";

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
  it("keeps no smaller margin with stronger parts, where nothing gave way before", () => {
    const options = {
      accuracy: "quick",
      whatIfs: [
        { kind: "leashFall", at: 0.5 },
        { kind: "leashFall", at: 0.1 },
      ],
    } as const;
    const before = studyOf(rig, options);
    const after = studyOf(strengthen(rig, 1.3), options);
    const whole = (id: string) => before.parts.every((part) => !part.parts || part.id !== id);
    expect(before.parts.some((part) => whole(part.id))).toBe(true);
    for (const part of before.parts.filter((one) => whole(one.id))) {
      const now = after.parts.find((one) => one.id === part.id)!;
      expect(now.margin).toBeGreaterThanOrEqual(0.999 * part.margin);
    }
  });

  it("gets no better verdict when more is required of it", () => {
    const ask = (value: number) => ({ ...rig, requiredFactor: { ...rig.requiredFactor, value } });
    const options = { accuracy: "quick", whatIfs: [{ kind: "leashFall", at: 0.5 }] } as const;
    const rank = (verdict: string) => ["holds", "thin", "fails"].indexOf(verdict);
    const [little, much] = [studyOf(ask(1), options), studyOf(ask(5), options)];
    expect(rank(much.verdict)).toBeGreaterThanOrEqual(rank(little.verdict));
    for (const [i, part] of much.parts.entries()) {
      expect(rank(part.verdict)).toBeGreaterThanOrEqual(rank(little.parts[i]!.verdict));
      expect(part.margin).toBe(little.parts[i]!.margin);
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
