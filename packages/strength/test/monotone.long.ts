/** A worse history and a lower test never raise a strength, in a thousand random histories and logs. */
import { seededRandom } from "@secondline/statistics";
import { expect, it } from "vitest";
import { checkHistories, checkLowerTests, checkWorseBounds, ROUNDING } from "./monotoneChecks.ts";

it("a worse history raises no strength", () => {
  const { central, lower } = checkHistories(1000, seededRandom(1031));
  console.log("worse history: largest rise of the centre and of the 5 % value", central, lower);
  expect(central).toBeLessThan(ROUNDING);
  expect(lower).toBeLessThan(ROUNDING);
});

it("a lower test raises no central strength", () => {
  const { central, lower } = checkLowerTests(1000, seededRandom(1032));
  console.log("lower test: largest rise of the centre and of the 5 % value", central, lower);
  expect(central).toBeLessThan(ROUNDING);
  // A lower best test is less scatter, as in EN 1990; why no bound that covers does without: STATISTICS.md.
  expect(lower).toBeLessThan(0.1);
});

it("a lower load below which a piece broke raises no strength, in 1000 random logs", () => {
  const { central, lower } = checkWorseBounds(1000, "below", seededRandom(1033));
  console.log("lower load below which a piece broke: largest rise of the centre and of the 5 % value", central, lower);
  expect(central).toBeLessThan(ROUNDING);
  expect(lower).toBeLessThan(ROUNDING);
});

it("a lower end of an interval raises no central strength, in 1000 random logs", () => {
  const { central, lower } = checkWorseBounds(1000, "between", seededRandom(1034));
  console.log("lower end of an interval: largest rise of the centre and of the 5 % value", central, lower);
  expect(central).toBeLessThan(ROUNDING);
  // Less scatter, as with a lower test: an interval far above the others counts like a best test.
  expect(lower).toBeLessThan(0.1);
});
