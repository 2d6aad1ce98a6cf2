/**
 * Numbers for people: one formatter for each quantity, each rounded to the safe side. Loads, drops and requirements are never
 * shown smaller than they are; strengths, margins and heights above the ground never larger.
 */

import { DECIMAL_SIGN } from "./localeEnglish.ts";

export type RoundingSide = "up" | "down" | "nearest";

/** Tolerance of rounding: without it 2.3, which is 22.999… tenths, would read 2.2 [-]. */
const ROUNDING_SLACK = 1e-9;
const MINUS = "\u2212";
const DASH = "–";

/** Turns a number with a decimal point into the language's form. */
export const local = (text: string): string =>
  DECIMAL_SIGN === "." ? text : text.replace(/(\d)\.(?=\d)/g, `$1${DECIMAL_SIGN}`);

/** A number that is not rounded, such as one at an axis. */
export const number = (value: number): string => local(String(value).replace("-", MINUS));

/** A fixed count of decimals, rounded to a side. */
export const rounded = (value: number, decimals: number, side: RoundingSide): string =>
  local(digits(value, decimals, side));

/** The same with a point. */
function digits(value: number, decimals: number, side: RoundingSide): string {
  if (!Number.isFinite(value)) return DASH;
  const scale = 10 ** decimals;
  const slack = ROUNDING_SLACK * Math.max(1, Math.abs(value * scale));
  const steps =
    side === "up"
      ? Math.ceil(value * scale - slack)
      : side === "down"
        ? Math.floor(value * scale + slack)
        : Math.round(value * scale);
  const text = (Math.abs(steps) / scale).toFixed(decimals);
  return steps < 0 ? `${MINUS}${text}` : text;
}

/** 4.0 reads 4; the printed minus, and the dash for a missing number, stay as they are. */
const shortened = (text: string): string => local(text.replace(/\.0$/, ""));

/** Kilonewtons without their unit, for columns with the unit in their head: two decimals below 10, one above. */
export function kilonewtons(newton: number, side: RoundingSide): string {
  return rounded(newton / 1000, Math.abs(newton) < 9995 ? 2 : 1, side);
}

export const load = (newton: number): string => `${kilonewtons(newton, "up")} kN`;
export const strength = (newton: number): string => `${kilonewtons(newton, "down")} kN`;
export const loadIn = (newton: number): string => kilonewtons(newton, "up");
export const strengthIn = (newton: number): string => kilonewtons(newton, "down");

/** A margin: two decimals below 10, none above. */
export const margin = (ratio: number): string => rounded(ratio, ratio < 10 ? 2 : 0, "down");

/** A required factor: as many decimals as it needs, two at most. */
export function required(factor: number): string {
  return local(digits(factor, 2, "up").replace(/\.?0+$/, ""));
}

/** A limit of a load, with the digits of the rule that states it. */
export const limitIn = (newton: number): string => required(newton / 1000);
export const limit = (newton: number): string => `${limitIn(newton)} kN`;

/** A factor on a strength: one above 1 is not shown smaller than it is, one below 1 not larger. */
export const factor = (value: number): string => rounded(value, 2, value > 1 ? "up" : "down");

/** A drop, in tenths of a metre. */
export const drop = (metre: number): string => `${rounded(metre, 1, "up")} m`;
export const dropIn = (metre: number): string => rounded(metre, 1, "up");
/** A height above the ground, in tenths of a metre. */
export const height = (metre: number): string => `${rounded(metre, 1, "down")} m`;
export const heightIn = (metre: number): string => rounded(metre, 1, "down");

/** Largest permitted mass of a walker, in tenths of a kilogram. */
export const massUpTo = (kilogram: number): string => `${shortened(digits(kilogram, 1, "down"))} kg`;

/** A length from the rig file or along a line: up to three significant digits. */
export function length(metre: number): string {
  if (!Number.isFinite(metre)) return DASH;
  const value = Number(metre.toPrecision(3));
  return `${number(value)} m`;
}

/** A place along a webbing, in tenths of a metre. */
export const along = (metre: number): string => `${shortened(digits(metre, 1, "nearest"))} m`;

/** A place to cut at, to the centimetre. */
export const cutAt = (metre: number): string => `${number(Number(digits(metre, 2, "nearest").replace(MINUS, "-")))} m`;

/** A share as a percentage: one decimal below 10 %, none above. */
export function percent(share: number, side: RoundingSide = "nearest"): string {
  const value = 100 * share;
  const from = side === "nearest" ? 9.95 : 10;
  return `${shortened(digits(value, Math.abs(value) < from ? 1 : 0, side))} %`;
}

export const degrees = (radian: number): string => `${Math.round((radian * 180) / Math.PI)}°`;
/** A moment or a time; more decimals where a view shows finer. */
export const seconds = (second: number, decimals = 2): string => `${rounded(second, decimals, "nearest")} s`;
export const speed = (metrePerSecond: number): string => `${rounded(metrePerSecond, 1, "up")} m/s`;
export const kilometresPerHour = (metrePerSecond: number): string => `${rounded(metrePerSecond * 3.6, 0, "up")} km/h`;

/** Energy, rounded to the nearest because it is no load and no strength. Joules below 100, kilojoules above. */
export function energy(joule: number): string {
  const size = Math.abs(joule);
  if (size < 99.5) return `${rounded(joule, 0, "nearest")} J`;
  return `${rounded(joule / 1000, size < 9995 ? 2 : 1, "nearest")} kJ`;
}

/** Keeps a number and its unit together in a text that may be broken into lines. */
export const unbroken = (text: string): string =>
  text.replace(/(\d) (?=(?:m|s|J|kJ|kN|km\/h|m\/s|%)(?![\w/]))/g, "$1\u00a0");

/** Digits in groups of three, parted by the mark that is not the decimal sign. */
export const thousands = (value: number): string =>
  String(value).replace(/\B(?=(?:\d{3})+$)/g, DECIMAL_SIGN === "." ? "," : ".");

/** Digits in groups of three, parted by a narrow space. */
export const groupedDigits = (value: number): string => String(value).replace(/\B(?=(\d{3})+$)/g, "\u202f");
