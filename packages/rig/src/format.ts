/** Numbers for the eye: two to three significant digits with the unit that suits the size. SI in, text out. */
import { MONTH, YEAR } from "./units.ts";

/** Three significant digits without trailing zeros; whole numbers above 1000 are rounded, not written in powers. */
function digits(value: number, count = 3): string {
  if (!Number.isFinite(value)) return "–";
  const rounded = Number(value.toPrecision(count));
  return rounded < 0 ? `\u2212${-rounded}` : String(Object.is(rounded, -0) ? 0 : rounded);
}

/** Force [N] as "850 N", "3.3 kN" or "25 kN": two digits below 10 kN, three above. */
export function formatForce(newton: number): string {
  const size = Math.abs(newton);
  if (size < 999.5) return `${digits(newton, size < 100 ? 2 : 3)} N`;
  return `${digits(newton / 1000, size < 9950 ? 2 : 3)} kN`;
}

/** Length [m] as "25 mm", "0.35 m", "60 m" or "1.2 km". */
export function formatLength(metre: number): string {
  const size = Math.abs(metre);
  if (size === 0) return "0 m";
  if (size < 0.0995) return `${digits(metre * 1000, 2)} mm`;
  if (size >= 999.5) return `${digits(metre / 1000)} km`;
  return `${digits(metre)} m`;
}

/** Mass [kg] as "100 g" or "80 kg". */
export function formatMass(kilogram: number): string {
  return Math.abs(kilogram) < 0.9995 ? `${digits(kilogram * 1000)} g` : `${digits(kilogram)} kg`;
}

/** Mass per length [kg/m] as "60 g/m". */
export function formatMassPerLength(kilogramPerMetre: number): string {
  return `${digits(kilogramPerMetre * 1000)} g/m`;
}

/** Angle [rad] as "40°". */
export function formatAngle(radian: number): string {
  return `${digits((radian * 180) / Math.PI, 2)}°`;
}

/** Time [s] as "3 ms", "1.4 s", "9 days", "14 months" or "3.5 years". */
export function formatTime(second: number): string {
  const size = Math.abs(second);
  if (size === 0) return "0 s";
  if (size < 0.0995) return `${digits(second * 1000, 2)} ms`;
  if (size < 600) return `${digits(second)} s`;
  if (size < 2 * 3600) return `${digits(second / 60, 2)} min`;
  if (size < 2 * 86400) return `${digits(second / 3600, 2)} h`;
  if (size < 2 * MONTH) return `${digits(second / 86400, 2)} days`;
  return size < 2 * YEAR ? `${digits(second / MONTH, 2)} months` : `${digits(second / YEAR, 2)} years`;
}

/** Months [-] as "14 months". */
export function formatMonths(months: number): string {
  const text = digits(months, 2);
  return text === "1" ? "1 month" : `${text} months`;
}

/** Stiffness [N/m] as "800 kN/m". */
export function formatStiffness(newtonPerMetre: number): string {
  return `${digits(newtonPerMetre / 1000)} kN/m`;
}

/** Share [-] as "4.5 %". */
export function formatPercent(share: number): string {
  return `${digits(share * 100)} %`;
}

/** Ratio such as a margin or factor [-] as "2.4": two significant digits, three from 10 on. */
export function formatRatio(ratio: number): string {
  return digits(ratio, Math.abs(ratio) < 9.95 ? 2 : 3);
}

/** Speed [m/s] as "6.3 m/s". */
export function formatSpeed(metrePerSecond: number): string {
  return `${digits(metrePerSecond, 2)} m/s`;
}

/** Energy [J] as "640 J" or "2.4 kJ". */
export function formatEnergy(joule: number): string {
  return Math.abs(joule) < 999.5 ? `${digits(joule, 2)} J` : `${digits(joule / 1000, 2)} kJ`;
}
