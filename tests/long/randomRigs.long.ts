/** Ten thousand rigs by chance; `tests/properties/randomRigs.test.ts` looks at a few of them every day. Hours: SECONDLINE_RIGS takes fewer. */
import { afterAll, describe, expect, it } from "vitest";
import { lookAt } from "../properties/randomRigs.ts";

const RIGS = Number(process.env.SECONDLINE_RIGS ?? 10_000);
/** Share of rigs that may fail their own audit, or find no rest [-]. */
const FAILED = 0.005;
const BLOCK = 100;

const failed: string[] = [];
let looked = 0;

describe("rigs by chance", () => {
  for (let from = 1; from <= RIGS; from += BLOCK) {
    it(`${from} to ${from + BLOCK - 1} give finite numbers, or say why they give none`, () => {
      for (let seed = from; seed < from + BLOCK && seed <= RIGS; seed++) {
        const one = lookAt(seed);
        if (one.kind === "run") expect(one.faults, String(seed)).toEqual([]);
        if (one.kind === "failed") {
          expect(one.why, String(seed)).toMatch(/\w{3,} .*\d/);
          failed.push(`${seed}: ${one.why}`);
        }
        if (one.kind !== "refused") looked += 1;
      }
    });
  }

  it("fail in less than one of 200", () => {
    expect(looked).toBeGreaterThan(RIGS / 2);
    expect(failed.length, failed.join("\n")).toBeLessThanOrEqual(FAILED * looked);
  });
});

afterAll(() => console.log(`${failed.length} of ${looked} failed\n${failed.join("\n")}`));
