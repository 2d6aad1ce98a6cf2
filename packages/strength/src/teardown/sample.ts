/** A piece that can be cut out of a line that comes down, or pulled beside it, and how long it must be. */
import type { LineStock } from "@secondline/rig";
import type { WrittenTest } from "../breakLog/readEntry.ts";

/** Webbing or rope that winds around a drum grip, at either end of a piece; assumed, for drums of about 10 cm [m]. */
export const GRIP_LENGTH = 0.6;
/** Free length between the grips; assumed. What is to be tested lies within it [m]. */
export const FREE_LENGTH = 0.4;

/** Length of a piece, grips included, that shows `inside` metres between the grips [m]. */
export const sampleLength = (inside = 0): number => Math.max(FREE_LENGTH, inside) + 2 * GRIP_LENGTH;

/** The kind of place that a piece is to show. */
export type SampleKind =
  | "new"
  | "newKnot"
  | "sunOnly"
  | "fallZone"
  | "clampMark"
  | "sewnJoin"
  | "join"
  | "sewnLoop"
  | "knot"
  | "damage"
  | "leash"
  | "leashPlain"
  | "ring"
  | "hardware"
  | "connection";

/** A stretch of one webbing, positions from its marked end [m]. */
export interface Cut {
  readonly webbing: string;
  readonly from: number;
  readonly to: number;
}

/** Other wear that weakens a piece, or lies in its grips; positions from the marked end [m]. */
export interface OtherWear {
  readonly kind: "clampMark" | "fallZone" | "stitching" | "damage";
  readonly from: number;
  readonly to: number;
}

export interface Sample {
  readonly kind: SampleKind;
  /** Key of the state: samples of like material and like doses have the same. */
  readonly state: string;
  /** Part of the rig from which the sample comes, or beside which a new sample stands. */
  readonly part: string;
  /** Number of the ring or connection, or the name of the hardware. */
  readonly name?: string;
  /** Webbing or rope whose factors it can feed; absent for metal and parts of unknown make. */
  readonly stock?: LineStock;
  /** Places to cut; two for a join, none for a sample that is not cut out of a webbing. */
  readonly cuts: readonly Cut[];
  /** Length, grips included; absent for a part that is pulled whole [m]. */
  readonly length?: number;
  /** Other wear that the sample cannot be without. */
  readonly others: readonly OtherWear[];
  /** Its row of the break log, without outcome and result. */
  readonly row: WrittenTest;
}

/** A state that the rig has but that cannot be pulled. */
export interface NotToBeHad {
  readonly kind: SampleKind;
  readonly part: string;
  readonly webbing?: string;
  readonly from?: number;
  readonly to?: number;
  readonly why: "nearEnd" | "tooNear" | "noRoom" | "leashShort" | "otherWebbingUnknown";
}

/** Doses within about a third of each other are one state. */
export const alike = (dose: number): number => Math.round(Math.log1p(Math.max(0, dose)) / Math.log(1.35));

/** Most that a log takes: a hundred years, a million falls [-]. */
const MOST_MONTHS = 1200;
const MOST_FALLS = 1e6;
/** Months as they are written into the log. */
export const written = (months: number): string => String(Number(Math.min(MOST_MONTHS, months).toFixed(2)));
/** Sun as it is written into the log; nothing where months outside brought none that is known. */
export const writtenSun = ({ sunMonths, monthsOutside }: { sunMonths: number; monthsOutside: number }): string =>
  sunMonths === 0 && monthsOutside > 0 ? "" : written(sunMonths);
/** Falls as they are written into the log. */
export const writtenFalls = (falls: number): string => String(Math.min(MOST_FALLS, Math.round(falls)));
/** A position as it is marked on the webbing, to the centimetre [m]. */
export const centimetres = (metre: number): number => Number(metre.toFixed(2));

/** Name of a piece in the log: most lines are webbing. */
export const formOf = ({ form }: LineStock): string => (form === "rope" ? "rope" : "webbing");
