/** The legs of an anchor as one ribbon: element 2i is leg i, the elements between two legs count as parted. */
import type { Recording } from "@secondline/engine";
import { createRibbon, fillRibbon, type Ribbon } from "./ribbon.ts";

export interface AnchorLegs {
  readonly ribbon: Ribbon;
  /** Legs from the rock to the master point at a time of the run [s]; a leg that broke is left out from then on. */
  readonly update: (master: Float32Array, time: number) => void;
}

/** `rock`: places of the rock points. */
export function createLegs(rock: Float32Array, side: "A" | "B", events: Recording["events"]): AnchorLegs {
  const count = rock.length / 3;
  const fractions = Float32Array.from({ length: 2 * count }, (_, i) => i % 2);
  const ribbon = createRibbon(2 * count, fractions, 0, 1);
  const nodes = new Float32Array(6 * count);
  const tensions = new Float32Array(2 * count - 1);
  const failures = events.filter(({ part, kind }) => part === `anchor${side}` && kind === "break");

  function update(master: Float32Array, time: number): void {
    for (let e = 0; e < tensions.length; e++) tensions[e] = e % 2 === 0 ? 0 : Number.NaN;
    for (let i = 0; i < failures.length; i++) {
      if (time >= failures[i]!.time) tensions[2 * (failures[i]!.at ?? 0)] = Number.NaN;
    }
    for (let i = 0; i < count; i++) {
      for (let c = 0; c < 3; c++) {
        nodes[6 * i + c] = rock[3 * i + c]!;
        nodes[6 * i + 3 + c] = master[c]!;
      }
    }
    fillRibbon(ribbon, nodes, 0, tensions, 0);
  }
  return { ribbon, update };
}
