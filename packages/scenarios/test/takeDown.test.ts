import { addDays, readDate } from "@secondline/strength";
import { describe, expect, it } from "vitest";
import { fallsLeft, type Rig, rigOnLaterDays, rigStrengths, takeDownDates } from "../src/index.ts";
import { searched } from "./madeUpRuns.ts";
import { testRig } from "./testRig.ts";

const on = "2026-06-01";
/** Webbing that has begun to age in the sun, so that it goes on doing so. */
const used: Rig = {
  ...testRig,
  main: {
    ...testRig.main,
    sections: [{ ...testRig.main.sections[0]!, condition: { monthsOutside: 2, sun: 1, ageYears: 1 } }],
  },
};
/** With a count of falls, so that those left can be told. */
const fallenOn = (rig: Rig): Rig => ({
  ...rig,
  leash: { ...rig.leash, falls: 0 },
  main: {
    ...rig.main,
    sections: rig.main.sections.map((one) => ({ ...one, wear: [{ kind: "fallZone", from: 10, to: 20, falls: 1 }] })),
  },
});
/** Worked out once for each share of its strength that the main line is loaded with. */
function once<T>(work: (share: number) => T): (share: number) => T {
  const known = new Map<number, T>();
  return (share) => {
    const there = known.get(share) ?? work(share);
    known.set(share, there);
    return there;
  };
}
const found = once((share) => searched(used, { share: (id) => (id === "main" ? share : 0.05) }));
const outlook = once((share) => {
  const rigOn = rigOnLaterDays({ rig: used, on })!;
  return takeDownDates({ on, rigOn, events: found(share).demands });
});

describe("the take-down date", () => {
  it("is that of the one rule: a part that keeps too little today is below it already, on every face", () => {
    for (const share of [0.2, 0.38, 0.45, 0.9]) {
      const { outcome } = found(share);
      const verdict = outcome.parts.find(({ id }) => id === "main")!.verdict;
      const main = outlook(share).parts.find(({ part }) => part === "main")!;
      expect(main.when === "now").toBe(verdict === "thin" || verdict === "fails");
    }
  });

  it("comes when the strength of that day no longer keeps what is required, and not a day before", () => {
    const { parts, date } = outlook(0.36);
    const [first] = parts;
    expect(first).toMatchObject({ part: "main", when: "later", fails: false });
    expect(date).toBe(first!.date);
    const rigOn = rigOnLaterDays({ rig: used, on })!;
    const there = (day: string) => {
      const rig = rigOn(readDate(day)!);
      return takeDownDates({ on: day, rigOn: () => rig, events: found(0.36).demands }).parts.find(
        ({ part }) => part === "main",
      )!.when;
    };
    expect(there(date!)).toBe("now");
    expect(there(addDays(readDate(date!)!, -1).toString())).not.toBe("now");
  });

  it("is none within the horizon for what stays strong", () => {
    expect(outlook(0.05).parts.every(({ when }) => when === "beyond")).toBe(true);
    expect(outlook(0.05).date).toBeUndefined();
  });

  it("comes no later than the day from which a wear lies beyond what is known, however much is kept by then", () => {
    const loads = searched(used, { share: () => 0.02 });
    const rigOn = rigOnLaterDays({ rig: used, on })!;
    const ask = { on, rigOn, events: loads.demands };
    const { parts, date } = takeDownDates({ ...ask, horizon: 40 * 365 });
    const far = parts.find(({ part }) => part === "main")!;
    expect(far).toMatchObject({ when: "later", because: "unknown", fails: false });
    expect(far.marginThen).toBeGreaterThan(far.required);
    const beyondOn = (day: string) =>
      rigStrengths(rigOn(readDate(day)!)).parts.find(({ id }) => id === "main")!.beyond !== undefined;
    expect(beyondOn(far.date!)).toBe(true);
    const dayBefore = (day: string) => addDays(readDate(day)!, -1).toString();
    expect(beyondOn(dayBefore(far.date!))).toBe(false);
    // Falls are left up to the first such day of any part.
    const left = (until: string) => fallsLeft({ ...ask, rigOn: (day) => fallenOn(rigOn(day)), until });
    expect(parts[0]!.because).toBe("unknown");
    expect(left(dayBefore(date!))).toBeGreaterThan(0);
    expect(left(date!)).toBe(0);
  });

  it("names every part that is below what is required today", () => {
    const both = searched(used, { share: (id) => (id === "main" || id === "leash" ? 0.5 : 0.05) });
    const rigOn = rigOnLaterDays({ rig: used, on })!;
    const now = takeDownDates({ on, rigOn, events: both.demands }).parts.filter(({ when }) => when === "now");
    expect(now.map(({ part }) => part).sort()).toEqual(["leash", "main"]);
  });
});
