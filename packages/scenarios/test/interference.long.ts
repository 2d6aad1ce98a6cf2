import { expect, it } from "vitest";
import { EXACT, interfered, leashFails } from "./interference.ts";

const SEEDS = 40;
/** Of 40 intervals of 95 % fewer hold the truth in one of 300 such counts [-]. */
const FEWEST = 34;

it.each(EXACT)(
  "intervals hold a known chance, %d deviations off, at their rate",
  (beta, exact) => {
    const held = Array.from({ length: SEEDS }, (_, i) =>
      leashFails(interfered(beta, { seed: 100 + i, runs: 64 })),
    ).filter(({ low, high }) => low < exact && high > exact);
    expect(held.length).toBeGreaterThanOrEqual(FEWEST);
  },
  600_000,
);
