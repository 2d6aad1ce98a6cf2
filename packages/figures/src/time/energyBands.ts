import type { EnergyLedger, LedgerEntry, Recording } from "@secondline/engine";
import { capital, listed, quantity } from "@secondline/words";
import { sayTime } from "@secondline/words/page/time";
import type { Palette } from "../palette.ts";
import { endsFalling } from "./eventMarks.ts";

/** Lost for good, stored in something stretched, in motion, or still to fall: told apart by pattern as well as name. */
export type BandKind = "lost" | "stored" | "moving" | "height";

export interface BandStyle {
  readonly key: string;
  readonly name: string;
  /** Name for narrow places, where hatching tells lost energy from stored energy. */
  readonly shortName: string;
  readonly kind: BandKind;
  readonly colour: keyof Palette;
  readonly entries: readonly LedgerEntry[];
}

type Entries = readonly LedgerEntry[];
type Line = "leash" | "main" | "backup";
type Loss = "friction" | "air" | "parting" | "slip" | "legs";

const lostIn = (line: Line, colour: keyof Palette, entries: Entries): BandStyle => {
  const part = sayTime(`energyBands.part.${line}`);
  const [name, shortName] = [sayTime("energyBands.lostIn", { part }), sayTime("energyBands.partLost", { part })];
  return { key: `lost-${line}`, name, shortName, kind: "lost", colour, entries };
};
const lostTo = (what: Loss, colour: keyof Palette, entries: Entries): BandStyle => {
  const [name, shortName] = [sayTime(`energyBands.${what}.name`), sayTime(`energyBands.${what}.short`)];
  return { key: `lost-${what}`, name, shortName, kind: "lost", colour, entries };
};
const stored = (part: Line | "rest", colour: keyof Palette, entries: Entries): BandStyle => {
  const shortName = sayTime(`energyBands.part.${part}`);
  const name =
    part === "rest" ? sayTime("energyBands.stretchRest") : sayTime("energyBands.stretch", { part: shortName });
  return { key: `stored-${part}`, name, shortName, kind: "stored", colour, entries };
};

/** The ledger books the work that the legs put into the rig. Work that they take out counts here like a loss. */
const signOf = (entry: LedgerEntry): number => (entry === "feet" ? -1 : 1);

/** Bands from the bottom of the stack to its top: lost energy first, energy of height last. */
export const ENERGY_BANDS: readonly BandStyle[] = [
  lostIn("leash", "lineLeash", ["lossLeash"]),
  lostIn("main", "lineMain", ["lossMain"]),
  lostIn("backup", "lineBackup", ["lossBackup"]),
  lostTo("friction", "lineConnection", ["lossFriction", "lossContact"]),
  lostTo("air", "ghost", ["lossDrag"]),
  lostTo("parting", "softInk", ["lossParting"]),
  lostTo("slip", "softInk", ["lossSlip"]),
  lostTo("legs", "softInk", ["feet"]),
  stored("leash", "lineLeash", ["stretchLeash"]),
  stored("main", "lineMain", ["stretchMain"]),
  stored("backup", "lineBackup", ["stretchBackup"]),
  stored("rest", "lineConnection", ["stretchOther"]),
  {
    key: "moving",
    name: sayTime("energyBands.moving"),
    shortName: sayTime("energyBands.moving"),
    kind: "moving",
    colour: "accent",
    entries: ["kinetic"],
  },
  {
    key: "height",
    name: sayTime("energyBands.stillFall"),
    shortName: sayTime("energyBands.fall"),
    kind: "height",
    colour: "ghost",
    entries: ["potential"],
  },
];

/** One layer of the stack, with its lower and upper edge at every time [J]. */
export interface Band extends BandStyle {
  readonly values: Float64Array;
  readonly bottom: Float64Array;
  readonly top: Float64Array;
  /** Largest energy of the band over the run [J]. */
  readonly most: number;
}

export interface EnergyStack {
  readonly times: Float32Array;
  readonly bands: readonly Band[];
  /** Bands too thin to be seen at any time; the stack's sum contains them all the same. */
  readonly thin: readonly BandStyle[];
  /** Greatest height of the stack [J]. */
  readonly top: number;
}

/** A band is drawn if it reaches this share of the stack at any time [-]. */
const VISIBLE_SHARE = 0.01;

/** Bands stacked over time. Height counts from its least value of the run, so that every band starts at zero. */
export function energyStack(ledger: EnergyLedger): EnergyStack {
  const count = ledger.times.length;
  const layers = ENERGY_BANDS.map((style) => ({ style, values: bandValues(ledger, style) }));
  const total = new Float64Array(count);
  for (const { values } of layers) for (let i = 0; i < count; i++) total[i]! += values[i]!;
  const top = greatest(total);
  const visible = layers.filter(({ values }) => greatest(values) > top * VISIBLE_SHARE);
  const thin = layers.filter((layer) => !visible.includes(layer) && greatest(layer.values) > 0);
  let bottom = new Float64Array(count);
  // Thin bands lie at the bottom, undrawn: the stack's height stays the true sum.
  for (const { values } of thin) bottom = bottom.map((edge, i) => edge + values[i]!);
  const bands = visible.map(({ style, values }) => {
    const band = { ...style, values, bottom, top: bottom.map((edge, i) => edge + values[i]!), most: greatest(values) };
    bottom = band.top;
    return band;
  });
  return { times: ledger.times, bands, thin: thin.map((layer) => layer.style), top };
}

function bandValues(ledger: EnergyLedger, style: BandStyle): Float64Array {
  const values = new Float64Array(ledger.times.length);
  for (const entry of style.entries) {
    const series = ledger.series[entry];
    const zero = style.kind === "height" ? least(series) : 0;
    for (let i = 0; i < values.length; i++) values[i]! += signOf(entry) * (series[i]! - zero);
  }
  // Rounding, or legs that pushed, may leave a band below zero. Then it is not drawn.
  for (let i = 0; i < values.length; i++) values[i] = Math.max(values[i]!, 0);
  return values;
}

/** Parts that gave and parts that took energy between the start of the run and one moment. */
export interface EnergyAccount {
  /** [s] */
  readonly time: number;
  /** Total given [J]. */
  readonly released: number;
  /** Largest first; shares of the energy given [-]. */
  readonly gave: readonly { readonly name: string; readonly share: number }[];
  readonly took: readonly { readonly name: string; readonly share: number }[];
}

const MOTION_NAME = sayTime("energyBands.motion");
const ENERGY_HOLDERS: readonly { readonly name: string; readonly entries: readonly LedgerEntry[] }[] = [
  { name: sayTime("energyBands.fallsHeight"), entries: ["potential"] },
  { name: sayTime("energyBands.leash"), entries: ["stretchLeash", "lossLeash"] },
  { name: sayTime("energyBands.mainLine"), entries: ["stretchMain", "lossMain"] },
  { name: sayTime("energyBands.backup"), entries: ["stretchBackup", "lossBackup"] },
  { name: sayTime("energyBands.anchorsConnections"), entries: ["stretchOther"] },
  { name: MOTION_NAME, entries: ["kinetic"] },
  { name: sayTime("energyBands.frictionAndContact"), entries: ["lossFriction", "lossContact"] },
  { name: sayTime("energyBands.air.name"), entries: ["lossDrag"] },
  { name: sayTime("energyBands.parting.name"), entries: ["lossParting"] },
  { name: sayTime("energyBands.slip.name"), entries: ["lossSlip"] },
  { name: sayTime("energyBands.theWalkersLegs"), entries: ["feet"] },
];

export function energyAccount(ledger: EnergyLedger, time: number): EnergyAccount {
  const at = indexAt(ledger.times, time);
  const changes = ENERGY_HOLDERS.map(({ name, entries }) => ({
    name,
    change: entries.reduce(
      (sum, entry) => sum + signOf(entry) * (ledger.series[entry][at]! - ledger.series[entry][0]!),
      0,
    ),
  }));
  const released = -changes.reduce((sum, { change }) => sum + Math.min(change, 0), 0);
  const shares = (sign: 1 | -1) =>
    changes
      .filter(({ change }) => change * sign > 0 && released > 0)
      .map(({ name, change }) => ({ name, share: (change * sign) / released }))
      .sort((a, b) => b.share - a.share);
  return { time: ledger.times[at] ?? 0, released, gave: shares(-1), took: shares(1) };
}

/** Smaller shares, and those after the first few, are summed up in a sentence [-]. */
const LEAST_NAMED_SHARE = 0.03;
const MOST_NAMED = 4;

/** The parts that held the energy of the fall at its lowest point, in words. */
export function energySentence(recording: Recording): string {
  const { time, released, took } = energyAccount(recording.energy, recording.walker.lowestTime);
  if (!(released > 0)) return sayTime("energyBands.noEnergyMoved");
  const takers = took.filter(({ name }) => name !== MOTION_NAME);
  const named = takers.filter(({ share }) => share >= LEAST_NAMED_SHARE).slice(0, MOST_NAMED);
  const rest = takers.filter((taker) => !named.includes(taker)).reduce((sum, { share }) => sum + share, 0);
  const moving = took.find(({ name }) => name === MOTION_NAME)?.share ?? 0;
  const shares = named.map(({ name, share }, i) =>
    sayTime(i === 0 ? "energyBands.firstShare" : "energyBands.share", { name, percent: quantity.percent(share) }),
  );
  if (rest >= 0.005) shares.push(sayTime("energyBands.rest", { percent: quantity.percent(rest) }));
  const moment = endsFalling(recording) ? sayTime("energyBands.endStillFalling") : sayTime("energyBands.lowestPoint");
  return sayTime(moving >= 0.005 ? "energyBands.accountMoving" : "energyBands.account", {
    moment,
    seconds: quantity.seconds(time),
    energy: quantity.energy(released),
    shares: capital(listed(shares, "and")),
    moving: quantity.percent(moving),
  });
}

/** How well the ledger balances, in a few words. */
export function balanceSentence(ledger: EnergyLedger): string {
  if (!(ledger.moved > 0)) return sayTime("energyBands.nothingMoved");
  const share = ledger.imbalance / ledger.moved;
  return share < 0.001
    ? sayTime("energyBands.balancedWithin", { percent: quantity.percent(0.001) })
    : sayTime("energyBands.balanced", { percent: quantity.percent(share, "up") });
}

/** Index of the ledger's last entry at or before `time`. */
export function indexAt(times: Float32Array, time: number): number {
  let low = 0;
  let high = times.length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (times[middle]! <= time) low = middle;
    else high = middle - 1;
  }
  return Math.max(low, 0);
}

function greatest(values: ArrayLike<number>): number {
  let best = 0;
  for (let i = 0; i < values.length; i++) best = Math.max(best, values[i]!);
  return best;
}

function least(values: ArrayLike<number>): number {
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < values.length; i++) best = Math.min(best, values[i]!);
  return best;
}
