/** Numbers for the eye: two to three significant digits with the unit that suits the size. SI in, text out. */
import { MONTH_SECONDS, YEAR_SECONDS } from "./units.ts";

/** A number of a few significant digits with its unit; a dash when there is no number. */
function text(value: number, unit: string, count = 3): string {
  if (!Number.isFinite(value)) return "–";
  const rounded = Number(value.toPrecision(count));
  return `${rounded < 0 ? `\u2212${-rounded}` : Math.abs(rounded)}${unit}`;
}

/** Force [N] as "850 N", "3.3 kN" or "25 kN": two digits below 10 kN, three above. */
export function formatForce(newton: number): string {
  const size = Math.abs(newton);
  if (size < 999.5) return text(newton, " N", size < 100 ? 2 : 3);
  return text(newton / 1000, " kN", size < 9950 ? 2 : 3);
}

/** Length [m] as "25 mm", "0.35 m", "60 m" or "1.2 km". */
export function formatLength(metre: number): string {
  const size = Math.abs(metre);
  if (size === 0) return "0 m";
  if (size < 0.0995) return text(metre * 1000, " mm", 2);
  if (size >= 999.5) return text(metre / 1000, " km");
  return text(metre, " m");
}

/** Mass [kg] as "100 g" or "80 kg". */
export function formatMass(kilogram: number): string {
  return Math.abs(kilogram) < 0.9995 ? text(kilogram * 1000, " g") : text(kilogram, " kg");
}

/** Angle [rad] as "40°". */
export function formatAngle(radian: number): string {
  return text((radian * 180) / Math.PI, "°");
}

/** Time [s] as "3 ms", "1.4 s", "9 days", "14 months" or "3.5 years". */
export function formatTime(second: number): string {
  const size = Math.abs(second);
  if (size === 0) return "0 s";
  if (size < 0.0995) return text(second * 1000, " ms", 2);
  if (size < 600) return text(second, " s");
  if (size < 2 * 3600) return text(second / 60, " min", 2);
  if (size < 2 * 86400) return text(second / 3600, " h", 2);
  if (size < 2 * MONTH_SECONDS) return text(second / 86400, " days", 2);
  return size < 2 * YEAR_SECONDS
    ? text(second / MONTH_SECONDS, " months", 2)
    : text(second / YEAR_SECONDS, " years", 2);
}

/** Months [-] as "14 months". */
export function formatMonths(months: number): string {
  return text(months, months.toPrecision(2) === "1.0" ? " month" : " months", 2);
}

/** Stiffness [N/m] as "800 kN/m". */
export function formatStiffness(newtonPerMetre: number): string {
  return text(newtonPerMetre / 1000, " kN/m");
}

/** Share [-] as "4.5 %". */
export function formatPercent(share: number): string {
  return text(share * 100, " %");
}

/**
 * Ratio such as a margin [-] as "2.4": two significant digits, three from 10 on. Rounded down, so that a margin of 1.96
 * does not read as 2 where 2 is asked for; or up, for what raises a strength.
 */
export function formatRatio(ratio: number, side: "down" | "up" = "down"): string {
  const size = Math.abs(ratio);
  const step = size < 1 ? 0.01 : size < 10 ? 0.1 : 1;
  // The small number keeps 2.3, which is 22.999… tenths, from reading 2.2.
  const steps = side === "up" ? Math.ceil(ratio / step - 1e-9) : Math.floor(ratio / step + 1e-9);
  return text(steps * step, "");
}

/** Energy [J] as "640 J" or "2.4 kJ". */
export function formatEnergy(joule: number): string {
  return Math.abs(joule) < 999.5 ? text(joule, " J", 2) : text(joule / 1000, " kJ", 2);
}
