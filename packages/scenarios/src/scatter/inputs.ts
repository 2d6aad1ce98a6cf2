/**
 * What is not known exactly when somebody falls, with how far it may be off. Nobody measured these spreads on a rig: they
 * are assumed, and the user can change every one of them.
 */
import type { Basis, Rig } from "@secondline/rig";
import { scattersIn, type WhatIf } from "../events/registry.ts";

export const INPUT_IDS = [
  "mass",
  "place",
  "moment",
  "letGo",
  "pretension",
  "stiffness",
  "backupStiffness",
  "leashStiffness",
  "damping",
  "slack",
  "leashLength",
  "friction",
] as const;
export type InputId = (typeof INPUT_IDS)[number];

export interface UncertainInput {
  readonly id: InputId;
  readonly name: string;
  /** Lognormal about its median, or uniform about its middle. */
  readonly distribution: "lognormal" | "uniform";
  /** Median or middle, in `unit`. */
  readonly central: number;
  /** "share": of the gap; "line": a fraction of the line, 0 at anchor A; "times": a factor on what the rig says. */
  readonly unit: "kg" | "N" | "m" | "s" | "-" | "share" | "line" | "times";
  /** Lognormal: coefficient of variation [-]; uniform: half its width, in `unit`. */
  readonly spread: number;
  readonly basis: Basis;
}

/** Other spreads than the assumed ones; 0 takes an input for exactly known. */
export type Spreads = Partial<Readonly<Record<InputId, number>>>;

/** Largest spread that makes sense [-]. */
export const MOST_SPREAD = 1;

interface Kind {
  readonly name: string;
  readonly spread: number;
  readonly why: string;
  readonly central: (rig: Rig) => number | undefined;
  readonly unit: UncertainInput["unit"];
}

const KINDS: Readonly<Record<Exclude<InputId, "place" | "moment">, Kind>> = {
  mass: {
    name: "Walker's mass",
    spread: 0.1,
    why: "another walker, clothes and what hangs on the harness",
    central: (rig) => rig.walker.mass,
    unit: "kg",
  },
  letGo: {
    name: "Time in which the feet let go",
    spread: 0.3,
    why: "a slip or a slow loss of balance",
    central: () => 1,
    unit: "times",
  },
  pretension: {
    name: "Tension of the main line",
    spread: 0.1,
    why: "how well it was read, creep and temperature since",
    central: (rig) => rig.main.pretension,
    unit: "N",
  },
  stiffness: {
    name: "Stiffness of the main line",
    spread: 0.1,
    why: "between batches, and with age and wet",
    central: () => 1,
    unit: "times",
  },
  backupStiffness: {
    name: "Stiffness of the backup",
    spread: 0.1,
    why: "between batches, and with age and wet",
    central: (rig) => (rig.backup ? 1 : undefined),
    unit: "times",
  },
  leashStiffness: {
    name: "Stiffness of the leash",
    spread: 0.15,
    why: "rope stiffens with every fall, and knots give way",
    central: () => 1,
    unit: "times",
  },
  damping: {
    name: "Damping of lines and leash",
    spread: 0.3,
    why: "how much a line takes up in a fast pull is the least known of it",
    central: () => 1,
    unit: "times",
  },
  slack: {
    name: "Slack of the backup",
    spread: 0.1,
    why: "how its length was measured, and what its knots take",
    central: (rig) => rig.backup?.slack,
    unit: "share",
  },
  leashLength: {
    name: "Length of the leash",
    spread: 0.05,
    why: "how it was tied, and how far its knots have settled",
    central: (rig) => rig.leash.length,
    unit: "m",
  },
  friction: {
    name: "Friction of the ring",
    spread: 0.3,
    why: "metal on webbing, dry or wet, slow or fast",
    central: (rig) => Math.min(...rig.rings.map((ring) => ring.friction)),
    unit: "-",
  },
};

/** A place is meant to within this much of the line, to either side: a step or two; places further off are events of their own [-]. */
export const PLACE_SPREAD = 0.02;
/** A part that fails in a catch does not wait for the peak: it fails up to this long before or after the peak, or the named moment [s]. */
const MOMENT_SPREAD = 0.03;

/** The uncertain inputs of a rig in one what-if. An input without a spread is left out, and one that the rig or the event does not have. */
export function uncertainInputs(rig: Rig, whatIf: WhatIf, spreads: Spreads = {}): readonly UncertainInput[] {
  const has = scattersIn(whatIf);
  return INPUT_IDS.flatMap((id): UncertainInput[] => {
    if ((id === "moment" || id === "letGo") && !has.includes(id)) return [];
    const input = id === "place" ? place(whatIf) : id === "moment" ? MOMENT : scattered(id, KINDS[id], rig);
    if (!input) return [];
    const own = spreads[id];
    if (own !== undefined && !(own >= 0 && own <= MOST_SPREAD)) {
      throw new RangeError(`The spread of ${id} must be between 0 and ${MOST_SPREAD}, got ${own}.`);
    }
    const basis: Basis = { kind: "assumed", note: "this spread was given by whoever asked" };
    const asked = own === undefined ? input : { ...input, spread: own, basis };
    return asked.spread > 0 ? [asked] : [];
  });
}

function scattered(id: InputId, { name, spread, why, central, unit }: Kind, rig: Rig): UncertainInput | undefined {
  const value = central(rig);
  // What is zero scatters by nothing.
  if (value === undefined || value === 0) return undefined;
  return { id, name, distribution: "lognormal", central: value, unit, spread, basis: { kind: "assumed", note: why } };
}

function place(whatIf: WhatIf): UncertainInput {
  return {
    id: "place",
    name: whatIf.kind === "leashFall" ? "Place of the fall" : "Place of the walker",
    distribution: "uniform",
    central: whatIf.at,
    unit: "line",
    spread: PLACE_SPREAD,
    basis: { kind: "assumed", note: "anywhere near the place named, one as likely as another" },
  };
}

const MOMENT: UncertainInput = {
  id: "moment",
  name: "Moment of the failure",
  distribution: "uniform",
  central: 0,
  unit: "s",
  spread: MOMENT_SPREAD,
  basis: { kind: "assumed", note: "what fails in a catch may fail a little before or after its peak" },
};

/** Nobody falls onto an anchor: half of the way to the nearer one is the nearest that is simulated. */
export function placeRange({ central, spread }: Pick<UncertainInput, "central" | "spread">): [number, number] {
  return [Math.max(central - spread, central / 2), Math.min(central + spread, (1 + central) / 2)];
}
