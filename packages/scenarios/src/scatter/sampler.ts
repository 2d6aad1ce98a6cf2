/**
 * Draws by number. Every event has a row of its own, in blocks that are even in every input (Latin hypercubes), and any of its draws
 * is known without the ones before it: so the same rig, event and seed give the same draw, whoever asks and in whatever order.
 */

import type { Rig } from "@secondline/rig";
import { latinHypercube, normalQuantile, seededRandom } from "@secondline/statistics";
import { logSpread } from "@secondline/strength";
import { type WhatIf, whatIfKey } from "../events/registry.ts";
import { nineDigits } from "../nineDigits.ts";
import { type Draw, NO_DRAW } from "./draw.ts";
import { INPUT_IDS, type Spreads, type UncertainInput, uncertainInputs } from "./inputs.ts";

export interface DrawSample {
  /** The draw: its event and its number. Runs that come before the event have the same id. */
  readonly id: string;
  readonly draw: Draw;
  /** Deviates in the order of `INPUT_IDS`, with mean 0 and standard deviation 1; 0 for an input that does not scatter here. Empty: nothing is drawn. */
  readonly deviates: readonly number[];
}

/** The event as it stands, nothing drawn. */
export const CENTRE: DrawSample = { id: "", draw: NO_DRAW, deviates: [] };

/** Draws to a block, and a step of what is added where a verdict is not settled. */
export const BLOCK_DRAWS = 8;

/** Any number: the same one, so that the same rig gives the same answer. */
export const SEED = 20_261_129;

export interface SamplerOptions {
  readonly seed: number;
  readonly spreads?: Spreads;
}

export class Sampler {
  readonly #rig: Rig;
  readonly #options: SamplerOptions;
  readonly #blocks = new Map<string, readonly DrawSample[]>();

  constructor(rig: Rig, options: SamplerOptions) {
    this.#rig = rig;
    this.#options = options;
  }

  /** Draws `from` to `to` (not included) of an event, counted from 0. */
  draws(event: WhatIf, from: number, to: number): readonly DrawSample[] {
    return Array.from({ length: Math.max(0, to - from) }, (_, i) => {
      const number = from + i;
      return this.#block(event, Math.floor(number / BLOCK_DRAWS))[number % BLOCK_DRAWS]!;
    });
  }

  #block(event: WhatIf, block: number): readonly DrawSample[] {
    const key = whatIfKey(event);
    const name = `${key}#${block}`;
    const known = this.#blocks.get(name);
    if (known) return known;
    const { seed, spreads } = this.#options;
    const inputs = uncertainInputs(this.#rig, event, spreads);
    const points = latinHypercube(BLOCK_DRAWS, inputs.length, seededRandom(hashOf(`${seed} ${name}`)));
    const made = points.map((point, i) => sampleOf(`${key}#${block * BLOCK_DRAWS + i}`, inputs, point));
    this.#blocks.set(name, made);
    return made;
  }
}

function sampleOf(id: string, inputs: readonly UncertainInput[], point: readonly number[]): DrawSample {
  const all = new Map(inputs.map((input, i) => [input.id, { input, at: point[i]! }]));
  const draw: Record<string, number> = {};
  const deviates = INPUT_IDS.map((name) => {
    const found = all.get(name);
    if (!found) return 0;
    const { value, deviate } = valueAt(found.input, found.at);
    draw[name] = value;
    return deviate;
  });
  // Rounded, so that the last bits of exp and log, which differ between engines, decide nothing.
  return { id, draw: nineDigits(draw), deviates: nineDigits(deviates) };
}

/** At a coordinate from −1 to 1 over equal chances. */
function valueAt({ distribution, spread }: UncertainInput, at: number): { value: number; deviate: number } {
  if (distribution === "uniform") return { value: spread * at, deviate: Math.sqrt(3) * at };
  const deviate = normalQuantile((1 + at) / 2);
  return { value: Math.exp(logSpread(spread) * deviate), deviate };
}

/** A whole number of 32 bits from a text (FNV-1a). */
export function hashOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return hash | 0;
}
