/** Quantities in the unit that suits their size, in the language's form. Files use the form of the rig package. */
import * as rig from "@secondline/rig";
import { local } from "./quantity.ts";

/** Force [N]. */
export const formatForce = (newton: number): string => local(rig.formatForce(newton));
/** Length [m]. */
export const formatLength = (metre: number): string => local(rig.formatLength(metre));
/** Mass [kg]. */
export const formatMass = (kilogram: number): string => local(rig.formatMass(kilogram));
/** Angle [rad]. */
export const formatAngle = (radian: number): string => local(rig.formatAngle(radian));
/** Stiffness [N/m]. */
export const formatStiffness = (newtonPerMetre: number): string => local(rig.formatStiffness(newtonPerMetre));
/** Share [-], as a percentage. */
export const formatPercent = (share: number): string => local(rig.formatPercent(share));
/** Months [-], as "14 months". */
export const formatMonths = (months: number): string => local(rig.formatMonths(months));
/** Ratio [-], rounded to the side that is given, down without one. */
export const formatRatio = (ratio: number, side?: "down" | "up"): string => local(rig.formatRatio(ratio, side));
