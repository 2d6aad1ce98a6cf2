/** Rig files by chance, with a seed: what somebody may write that the program accepts, near to its limits too. */

import { readFileSync } from "node:fs";
import { GENERIC_STOCKS, readRig } from "@secondline/rig";
import {
  type Assessed,
  assessRig,
  missingIn,
  NothingComputed,
  type Outcome,
  parseWhatIf,
  StaticsUnsolved,
  study,
  type WhatIf,
} from "@secondline/scenarios";
import { seededRandom } from "@secondline/statistics";
import { englishWords as words } from "@secondline/words";
import { tellFault } from "@secondline/words/faults";

const SOUND = JSON.parse(readFileSync(new URL("../../demo-data/sound-rig.json", import.meta.url), "utf8"));
const WEBBINGS = [...GENERIC_STOCKS.keys()].filter((id) => id.includes("webbing"));

/** A document like the sound demo rig, with spans, tensions, slack, masses and parts by chance. */
export function randomDocument(seed: number): Readonly<Record<string, unknown>> {
  const random = seededRandom(seed);
  const between = (low: number, high: number) => low + (high - low) * random.uniform();
  /** Evenly over orders of magnitude. */
  const about = (low: number, high: number) => Math.exp(between(Math.log(low), Math.log(high)));
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random.uniform() * list.length) % list.length]!;
  const count = Math.floor(between(0, 6));
  const { id: _, backup, ...rest } = SOUND;
  const span = about(10, 250).toFixed(1);
  const rise = between(-8, 8).toFixed(1);
  const stock = pick(WEBBINGS);
  // An anchor that gives, in one rig of four.
  const gives = (side: object) =>
    seed % 4 === 0 ? { ...side, stiffness: `${about(15, 3000).toFixed(0)} kN/m` } : side;
  return {
    ...rest,
    anchorA: gives(rest.anchorA),
    anchorB: gives(rest.anchorB),
    name: `By chance ${seed}`,
    span: `${span} m`,
    rise: `${rise} m`,
    // Deep enough for every fall: where it ends early there is less to look at.
    ground: [
      ["0 m", "-1 m"],
      [`${(Number(span) / 2).toFixed(1)} m`, "-120 m"],
      [`${span} m`, `${(Number(rise) - 1).toFixed(1)} m`],
    ],
    main: { ...rest.main, pretension: `${about(0.2, 14).toFixed(2)} kN`, sections: [{ stock }] },
    ...(random.uniform() < 0.1
      ? {}
      : {
          backup: {
            ...backup,
            // Where no number of connections puts one.
            tapes: random.uniform() < 0.5 ? [] : [{ at: 0.21, strength: "300 N" }],
            slack: `${about(0.5, 30).toFixed(1)} %`,
            sections: [{ stock: pick(WEBBINGS) }],
            connections: Array.from({ length: count }, (_, i) => ({
              at: Number(((i + 1) / (count + 1)).toFixed(3)),
              strength: "20 kN",
            })),
          },
        }),
    leash: { ...rest.leash, length: `${about(1.1, 4).toFixed(2)} m` },
    walker: { ...rest.walker, mass: `${about(35, 180).toFixed(0)} kg` },
  };
}

const EVENTS = [
  "fall@0.5",
  "fall@0.1",
  "fall@0.93",
  "fails@0,hanging@0.5",
  "fails@1,standing@0.3",
  "fails@0.4,hanging@0.7",
  "leg@A1,hanging@0.06",
  "leg@B2,caught@0.4",
  "fall@0.04",
];

export type Looked =
  | { readonly kind: "refused"; readonly why: string }
  | { readonly kind: "failed"; readonly why: string }
  | { readonly kind: "run"; readonly faults: readonly string[] };

/** One random rig in one what-if on the coarse mesh: what is wrong with what comes of it. */
export function lookAt(seed: number): Looked {
  const reading = readRig(randomDocument(seed));
  if (!reading.ok) return { kind: "refused", why: reading.issues.map(({ message }) => tellFault(message)).join(" ") };
  const assessed = assessRig(reading.rig);
  const event = parseWhatIf(EVENTS[seed % EVENTS.length]!)!;
  if (missingIn(event, reading.rig)) return { kind: "run", faults: [] };
  const outcome = outcomeOf(assessed, event);
  if (typeof outcome === "string") return { kind: "failed", why: outcome };
  return { kind: "run", faults: [...endless(outcome, ""), ...said(assessed, outcome)] };
}

/** What came of the one what-if, or why it gave no numbers. Every other error is one of the program's own. */
function outcomeOf(assessed: Assessed, event: WhatIf): Outcome | string {
  const work = study(assessed, { accuracy: "quick", whatIfs: [event] });
  try {
    let step = work.next();
    while (!step.done) step = work.next();
    return step.value.outcome;
  } catch (error) {
    if (error instanceof NothingComputed || error instanceof StaticsUnsolved) return error.message;
    throw error;
  }
}

/** Places of an outcome at which there is a number that is none, or has no end. */
function endless(value: unknown, path: string): string[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [`${path} is ${value}`];
  if (value instanceof Map) return endless([...value], path);
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([name, one]) => endless(one, `${path}.${name}`));
}

/** Sentences and cells in which a number is missing. */
function said({ rig }: Assessed, outcome: Outcome): string[] {
  const texts = [
    words.verdict(rig, outcome),
    ...outcome.parts.flatMap((part) => Object.values(words.partRow(rig, part))),
  ];
  return texts.map(String).filter((text) => /NaN|undefined|Infinity|∞/.test(text));
}
