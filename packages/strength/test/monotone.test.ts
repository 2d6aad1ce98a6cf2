/** A worse history and a lower test never raise a strength: the short form; `monotone.long.ts` has a thousand histories. */
import { seededRandom } from "@secondline/statistics";
import { expect, it } from "vitest";
import { checkHistories, checkLowerTests, checkWorseBounds, ROUNDING } from "./monotoneChecks.ts";

it("a worse history raises no strength, whatever was tested, in 100 random ones", () => {
  const { central, lower } = checkHistories(100, seededRandom(31));
  expect(central).toBeLessThan(ROUNDING);
  expect(lower).toBeLessThan(ROUNDING);
});

it("a lower test raises no central strength, whatever was tested, in 100 random logs", () => {
  const { central, lower } = checkLowerTests(100, seededRandom(32));
  expect(central).toBeLessThan(ROUNDING);
  // A lower best test is less scatter: as in EN 1990, the 5 % value may gain by that.
  expect(lower).toBeLessThan(0.05);
});

it("a lower load below which a piece broke raises no strength, in 100 random logs", () => {
  const { central, lower } = checkWorseBounds(100, "below", seededRandom(33));
  expect(central).toBeLessThan(ROUNDING);
  expect(lower).toBeLessThan(ROUNDING);
});

it("a lower end of an interval raises no central strength, in 100 random logs", () => {
  const { central, lower } = checkWorseBounds(100, "between", seededRandom(34));
  expect(central).toBeLessThan(ROUNDING);
  // Less scatter, as with a lower test: an interval far above the others counts like a best test.
  expect(lower).toBeLessThan(0.05);
});
