/** Natural length of a line from how it is rigged; close enough to place wear on it. */
import type { LineStock, Rig, WebbingSection } from "@secondline/rig";

/** Distance between the anchors [m]. */
export function chordLength(rig: Rig): number {
  return Math.hypot(rig.span, rig.rise);
}

/** Strain at a slow-pull tension, points joined by straight lines [-]. */
export function strainAt(stock: LineStock, tension: number): number {
  const { curve } = stock;
  let i = 1;
  while (i < curve.length - 1 && curve[i]![1] < tension) i++;
  const [x0, t0] = curve[i - 1]!;
  const [x1, t1] = curve[i]!;
  return x0 + ((tension - t0) * (x1 - x0)) / (t1 - t0);
}

/** Natural length of the main line: stretched by its pretension it spans the chord [m]. */
export function mainNaturalLength(rig: Rig): number {
  const { sections, pretension } = rig.main;
  const stretched = (s: WebbingSection) => 1 + strainAt(s.stock, pretension);
  const rest = sections.find((s) => s.length === undefined);
  const known = sections.filter((s) => s.length !== undefined);
  const knownStretched = known.reduce((sum, s) => sum + s.length! * stretched(s), 0);
  const knownNatural = known.reduce((sum, s) => sum + s.length!, 0);
  if (rest === undefined) return (chordLength(rig) * knownNatural) / knownStretched;
  return knownNatural + (chordLength(rig) - knownStretched) / stretched(rest);
}

/** Natural length of the backup, or undefined without one [m]. */
export function backupNaturalLength(rig: Rig): number | undefined {
  return rig.backup && chordLength(rig) * (1 + rig.backup.slack);
}
