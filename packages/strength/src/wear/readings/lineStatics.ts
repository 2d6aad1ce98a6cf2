/**
 * A line at rest with somebody standing on it: two halves that hang between anchor and walker, each a shallow parabola under its own
 * weight, stretched on the slow-pull curve. x along the span, sag downwards from the straight line between the anchors. Forces [N], lengths [m].
 */
import { backupNaturalLength, chord, mainSectionLengths, type Rig, strainAt } from "@secondline/rig";

/** Standard gravity [m/s²], as in the engine, of which this package knows nothing. */
const GRAVITY = 9.80665;

export interface LoadedLine {
  /** Sag where the walker stands [m]. */
  readonly sag: number;
  /** Largest of the mean tensions of the two halves [N]. */
  readonly tension: number;
}

interface Load {
  /** Mass of the walker on the line [kg]. */
  readonly walker: number;
  /** Place as a fraction of the span [-]. */
  readonly at: number;
}

/** Sag and tension under a walker if the line has a tension with nobody on it [N]; undefined when its sections do not fit then. */
export function standing(rig: Rig, pretension: number, { walker, at }: Load): LoadedLine | undefined {
  const pieces = sectionsAt(rig, pretension);
  if (pieces === undefined) return undefined;
  const natural = pieces.reduce((sum, { length }) => sum + length, 0);
  const weight = (lineMass(rig) * GRAVITY) / chord(rig);
  const [xA, xB] = [at * rig.span, (1 - at) * rig.span];
  // Vertical balance at the walker: the weight there over the slopes of the two halves.
  const moment = (walker * GRAVITY * xA * xB) / rig.span + (weight * xA * xB) / 2;
  const stretchedLength = (tension: number) =>
    pieces.reduce((sum, { curve, length }) => sum + length * (1 + (strainAt(curve, tension) ?? 0)), 0);
  let [low, high] = [1e-6, natural + chord(rig)];
  // With more sag the line's path gets longer. Its tension falls, so its stretched length gets shorter: there is one root.
  for (let i = 0; i < 200 && high - low > 1e-13 * high; i++) {
    const sag = (low + high) / 2;
    const { lengths, mean } = lineShape(rig, { sag, horizontal: moment / sag, weight, xA, xB });
    if (lengths[0] + lengths[1] < stretchedLength(mean)) low = sag;
    else high = sag;
  }
  const sag = (low + high) / 2;
  return { sag, tension: lineShape(rig, { sag, horizontal: moment / sag, weight, xA, xB }).most };
}

interface Shape {
  readonly sag: number;
  readonly horizontal: number;
  readonly weight: number;
  readonly xA: number;
  readonly xB: number;
}

/** Lengths of the two halves and their tensions. */
function lineShape(rig: Rig, { sag, horizontal, weight, xA, xB }: Shape) {
  const rise = rig.rise / rig.span;
  const half = (x: number, drop: number) => {
    const straight = Math.hypot(x, drop);
    // A parabola is longer than its chord by w² x³ · cos³ / 24 H², to the second order of its own sag.
    const length = straight + (weight * weight * x ** 4) / (24 * horizontal * horizontal * straight);
    return { length, tension: (horizontal * straight) / x };
  };
  const [a, b] = [half(xA, rise * xA - sag), half(xB, rise * xB + sag)];
  const mean = (a.tension * a.length + b.tension * b.length) / (a.length + b.length);
  return { lengths: [a.length, b.length] as const, mean, most: Math.max(a.tension, b.tension) };
}

function sectionsAt(rig: Rig, pretension: number) {
  try {
    const lengths = mainSectionLengths({ ...rig, main: { ...rig.main, pretension } });
    return rig.main.sections.map(({ stock }, i) => ({ curve: stock.curve, length: lengths[i]! }));
  } catch {
    return undefined;
  }
}

/** Mass of the main line and of a backup that hangs on it [kg]. */
function lineMass(rig: Rig): number {
  const main = rig.main.sections.reduce((most, { stock }) => Math.max(most, stock.mass), 0) * chord(rig);
  const backup = (rig.backup?.sections ?? []).reduce((most, { stock }) => Math.max(most, stock.mass), 0);
  return main + backup * backupNaturalLength(rig);
}
