import { describe, expect, it } from "vitest";
import { typescriptKernel } from "../src/kernel/lineKernel.ts";
import { COLUMN } from "../src/kernel/lineLayout.ts";
import { loadLine } from "../src/line/line.ts";
import { buildModel } from "../src/line/model.ts";
import { RingContact } from "../src/rigging/ringContact.ts";
import { FALL } from "./rigs.ts";

/** A contact on a straight line of even elements that carries a tension, with a ring pressed against it that moves across it. */
function pressed(tension: number, speed: number): { force: number; spring: number } {
  const { main, step, memory } = buildModel(FALL);
  const kernel = typescriptKernel(memory);
  loadLine(main, kernel, step);
  const m = kernel.memory;
  for (let i = 0; i < main.nodes; i++) m[main.base + i] = 20 * main.fractions[i]!;
  m.fill(tension, main.base + COLUMN.T * main.pitch, main.base + COLUMN.T * main.pitch + main.elements);
  const stiffness = 40_000;
  const contact = new RingContact(main, m, FALL.ring, { stiffness, xi: main.nodes >> 1, step });
  const ring = Float64Array.from([m[main.base + (main.nodes >> 1)]!, 0, -0.035, 0, 0, -speed]);
  contact.push(ring);
  return { force: contact.force, spring: stiffness * 0.01 };
}

describe("the ring on a line", () => {
  it("is resisted by half of a string's own wave resistance, √(T·μ), at the tension that the line has", () => {
    for (const tension of [500, 2000, 8000]) {
      const { force, spring } = pressed(tension, 1);
      // Less what it slows down in the step, at the end of which it is taken.
      const wave = Math.sqrt(tension * 0.06);
      expect((force - spring) / wave).toBeGreaterThan(0.8);
      expect((force - spring) / wave).toBeLessThan(1);
    }
  });

  it("is not resisted by waves in a slack line, which carries none", () => {
    const { force, spring } = pressed(0, 10);
    expect(force).toBeCloseTo(spring, 9);
  });
});
