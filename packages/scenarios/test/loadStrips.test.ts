import { describe, expect, it } from "vitest";
import { assessRig, partStrip, pullStrip, type RunOrder, whatIfKey } from "../src/index.ts";
import { searched } from "./madeUpRuns.ts";
import { chanceOf } from "./randomRigs.ts";
import { testRig } from "./testRig.ts";

const assessed = assessRig(testRig);
/** A load that scatters by draws, of half of what the part holds. */
const share = (part: string, order: RunOrder) =>
  0.5 + 0.1 * chanceOf(`${part} ${whatIfKey(order.event)} ${JSON.stringify(order.draw)}`);
const found = searched(assessed, { share, pull: (order) => 3000 + 500 * chanceOf(JSON.stringify(order.draw)) });

describe("the loads behind E", () => {
  it.each(["leash", "main", "backup", "connection.1", "ring"])(
    "%s: one for each run that its margin rests on",
    (id) => {
      const part = found.outcome.parts.find((one) => one.id === id)!;
      const least = part.byClass[part.governing!]!;
      const strip = partStrip(part)!;
      expect(strip).toMatchObject({
        whatIf: least.whatIf,
        demand: least.demand,
        strength5: least.strength5,
        drawn: true,
      });
      expect(strip.loads).toHaveLength(least.runs);
      expect([...strip.loads].sort((a, b) => a - b)).toEqual(strip.loads);
      // Every run asks for 50 to 60 % of R, wherever along the webbing that is, and E lies at the upper end of that.
      for (const load of strip.loads) {
        expect(load / least.strength5).toBeGreaterThan(0.5 - 1e-6);
        expect(load / least.strength5).toBeLessThan(0.6 + 1e-6);
      }
      expect(strip.loads.filter((load) => load > strip.demand).length).toBeLessThan(0.1 * strip.loads.length);
    },
  );

  it("the pull on the person has its runs too, and no R", () => {
    const strip = pullStrip(found.outcome)!;
    expect(strip.demand).toBe(found.outcome.person!.demand);
    expect(strip.loads.every((pull) => pull >= 3000 && pull <= 3500)).toBe(true);
    expect(strip.strength5).toBeUndefined();
  });

  it("a part that no run loaded has none", () => {
    const idle = searched(assessed, { share: (part) => (part === "leash" ? 0 : 0.2) });
    expect(partStrip(idle.outcome.parts.find(({ id }) => id === "leash")!)).toBeUndefined();
  });
});
