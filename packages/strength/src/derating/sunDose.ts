/** Turns calendar months into a dose of sun. All weights are assumed; they are here to be seen and replaced. */
import type { Basis } from "@secondline/rig";

export type LatitudeClass = "low" | "middle" | "high";
export type Hemisphere = "north" | "south";

export const SUN_DOSE_BASIS: Basis = {
  kind: "assumed",
  note: "weights for season and latitude are assumed: 1 is an average month of a year at 30 to 50 degrees, unshaded",
};

/** Weight of each calendar month, January to December, on the northern half; the mean is 1 [-]. */
const MONTH_WEIGHT = [0.4, 0.6, 0.9, 1.2, 1.5, 1.65, 1.65, 1.45, 1.1, 0.75, 0.45, 0.35] as const;

/** Weight of the latitude: below 30 degrees, 30 to 50, above 50 [-]. */
const LATITUDE_WEIGHT: Readonly<Record<LatitudeClass, number>> = { low: 1.3, middle: 1, high: 0.8 };

/** Dose of one calendar month (1 to 12) in the open [months of full sun]. */
export function monthDose(month: number, sun: number, latitude: LatitudeClass, hemisphere: Hemisphere): number {
  const northern = hemisphere === "north" ? month : ((month + 5) % 12) + 1;
  const weight = MONTH_WEIGHT[northern - 1];
  if (weight === undefined) throw new Error(`month must be 1 to 12, got ${month}`);
  return weight * sun * LATITUDE_WEIGHT[latitude];
}
