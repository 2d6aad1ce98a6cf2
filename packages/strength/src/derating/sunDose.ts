/** Turns calendar months into a dose of sun. All weights are assumed; they are here to be seen and replaced. */
import type { Latitude } from "@secondline/rig";
import { constant } from "./constantValues.ts";

export type Hemisphere = "north" | "south";

/** Weight of each calendar month, January to December, on the northern half; the mean is 1 [-]. */
const MONTH_WEIGHT: readonly number[] = [
  constant("dose.january"),
  constant("dose.february"),
  constant("dose.march"),
  constant("dose.april"),
  constant("dose.may"),
  constant("dose.june"),
  constant("dose.july"),
  constant("dose.august"),
  constant("dose.september"),
  constant("dose.october"),
  constant("dose.november"),
  constant("dose.december"),
];

/** Weight of the latitude: below 30 degrees, 30 to 50, above 50 [-]. */
const LATITUDE_WEIGHT: Readonly<Record<Latitude, number>> = {
  low: constant("dose.lowLatitude"),
  middle: constant("dose.middleLatitude"),
  high: constant("dose.highLatitude"),
};

/** The sunnier of two latitudes. */
export const sunnier = (a: Latitude, b: Latitude): Latitude => (LATITUDE_WEIGHT[b] > LATITUDE_WEIGHT[a] ? b : a);
export const lessSunny = (a: Latitude, b: Latitude): Latitude => (sunnier(a, b) === a ? b : a);
const LATITUDES = Object.keys(LATITUDE_WEIGHT) as Latitude[];
const SUNNIEST_LATITUDE = LATITUDES.reduce(sunnier);
export const DARKEST_LATITUDE = LATITUDES.reduce(lessSunny);

/** Sun of an average month there [months of full sun]; the most if nobody said where. */
export const latitudeWeight = (latitude: Latitude = SUNNIEST_LATITUDE): number => LATITUDE_WEIGHT[latitude];

/** Dose of one calendar month (1 to 12) in the open [months of full sun]. */
export function monthDose(month: number, sun: number, latitude: Latitude, hemisphere: Hemisphere): number {
  const northern = hemisphere === "north" ? month : ((month + 5) % 12) + 1;
  const weight = MONTH_WEIGHT[northern - 1];
  if (weight === undefined) throw new Error(`month must be 1 to 12, got ${month}`);
  return weight * sun * LATITUDE_WEIGHT[latitude];
}

/** Place and light of a part; a value that nobody wrote down is left out. */
export interface Climate {
  readonly latitude?: Latitude;
  readonly hemisphere?: Hemisphere;
}

/**
 * Sun taken month by month. Without a latitude the sunniest one counts, without a hemisphere the one that brought more sun in
 * all.
 */
export class DoseSum {
  private readonly latitude: Latitude;
  private readonly sums: Map<Hemisphere, number>;

  constructor({ latitude, hemisphere }: Climate) {
    this.latitude = latitude ?? SUNNIEST_LATITUDE;
    const possible: readonly Hemisphere[] = hemisphere === undefined ? ["north", "south"] : [hemisphere];
    this.sums = new Map(possible.map((one) => [one, 0]));
  }

  /** `share`: of a calendar month (1 to 12); `sun`: of the light [-]. */
  add(month: number, share: number, sun: number): void {
    for (const [hemisphere, sum] of this.sums) {
      this.sums.set(hemisphere, sum + share * monthDose(month, sun, this.latitude, hemisphere));
    }
  }

  /** [months of full sun] */
  get total(): number {
    return Math.max(...this.sums.values());
  }
}

const SUNNIEST_FIRST: readonly number[] = [...MONTH_WEIGHT].sort((a, b) => b - a);
const DARKEST_FIRST: readonly number[] = [...SUNNIEST_FIRST].reverse();

/**
 * Most sun that so many months within some years can bring, unshaded: the sunniest months of every year first; at a low latitude if none
 * is given [months of full sun].
 */
export const mostDose = (months: number, years: number, latitude?: Latitude): number =>
  latitudeWeight(latitude) * doseOf(months, years, SUNNIEST_FIRST);

/** Least sun that so many months within some years there can bring, unshaded: the darkest of every year first [months of full sun]. */
export const leastDose = (months: number, years: number, latitude: Latitude): number =>
  latitudeWeight(latitude) * doseOf(months, years, DARKEST_FIRST);

/** Takes months in an order, each as often as the years have it; a part of a year has the first months of the order. */
function doseOf(months: number, years: number, inOrder: readonly number[]): number {
  const span = Math.max(years, months / 12);
  const whole = Math.floor(span);
  const rest = 12 * (span - whole);
  let left = months;
  let dose = 0;
  for (const [i, weight] of inOrder.entries()) {
    const taken = Math.min(left, whole + Math.min(1, Math.max(0, rest - i)));
    dose += taken * weight;
    left -= taken;
  }
  return dose;
}
