import { describe, expect, it } from "vitest";
import { byDanger, type Outcome, type WhatIfOutcome, weakestIn } from "../src/index.ts";

const whatIf = (key: string, more: Partial<WhatIfOutcome> = {}): WhatIfOutcome => ({
  whatIf: { kind: "leashFall", at: 0.5 },
  key,
  class: "expected",
  ok: true,
  caughtBy: "main",
  gaveWay: [],
  counts: true,
  runs: 1,
  ...more,
});
const part = (id: string, event: number, margin: number, required = 2) => ({
  id,
  verdict: "thin",
  governing: "expected",
  byClass: { expected: { whatIf: event, margin, required } },
});
const order = (whatIfs: readonly WhatIfOutcome[], parts: readonly unknown[] = []) =>
  byDanger({ whatIfs, parts } as unknown as Outcome).map(({ entry }) => entry.key);

describe("what-ifs by danger", () => {
  it("begin with what nobody knows of, then with falls that nobody is caught in, those that count first", () => {
    const all = [
      whatIf("caught"),
      whatIf("follows", { caughtBy: "nothing", counts: false }),
      whatIf("ground", { feetClearance: -0.1 }),
      whatIf("unknown", { ok: false }),
    ];
    expect(order(all)).toEqual(["unknown", "ground", "follows", "caught"]);
  });

  it("go on with those in which least is left of what is required, then with the hardest pull", () => {
    const pulled = (leash: number) => ({ peaks: { leash } as NonNullable<WhatIfOutcome["peaks"]> });
    const all = [whatIf("soft", pulled(1000)), whatIf("hard", pulled(4000)), whatIf("a", pulled(500)), whatIf("b")];
    // 1.6 of 1.5 is nearer to its limit than 1.9 of 2 would be to another: shares count, not margins.
    expect(order(all, [part("leash", 2, 2.4), part("main", 3, 1.6, 1.5)])).toEqual(["b", "a", "hard", "soft"]);
  });

  it("name the parts that have their least margin there, the nearest one first", () => {
    const [first] = byDanger({
      whatIfs: [whatIf("one")],
      parts: [part("leash", 0, 2.4), part("main", 0, 2.1)],
    } as unknown as Outcome);
    expect(first!.worstOf.map((one) => one.part)).toEqual(["main", "leash"]);
  });

  it("have a weakest part each, with its place along the webbing, where one has its least margin there", () => {
    const main = part("main", 1, 2.1);
    const outcome = {
      whatIfs: [whatIf("one"), whatIf("two"), whatIf("three")],
      parts: [part("leash", 1, 2.4), { ...main, byClass: { expected: { ...main.byClass.expected, at: 12.5 } } }],
    } as unknown as Outcome;
    expect(weakestIn(outcome, "two")).toMatchObject({ part: "main", margin: 2.1, at: 12.5 });
    expect(weakestIn(outcome, "one")).toBeUndefined();
    expect(weakestIn(outcome, "not run")).toBeUndefined();
  });
});
