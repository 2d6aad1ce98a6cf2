/** A worse history and a lower test never raise a strength, in a thousand random histories and logs. */
import { expect, it } from "vitest";
import { seededRandom } from "../src/index.ts";
import { checkHistories, checkLowerTests, ROUNDING } from "./monotoneChecks.ts";

it("a worse history raises no strength", () => {
  const { central, lower } = checkHistories(1000, seededRandom(1031));
  expect(central).toBeLessThan(ROUNDING);
  // Less is left open where a dose comes nearer to those that were tested.
  expect(lower).toBeLessThan(0.02);
});

it("a lower test raises no central strength", () => {
  const { central, lower } = checkLowerTests(1000, seededRandom(1032));
  // What tests fall short of the fit is shared out to smaller doses, which moves them by this much.
  expect(central).toBeLessThan(0.001);
  expect(lower).toBeLessThan(0.04);
});
