/** A ground profile of one number: how deep the lowest point lies, and where. Its shape is a guess between them. */
import { chordHeight, parseQuantity, quantityText } from "@secondline/rig";
import { centimetre } from "../metres.ts";

/** The rock's edge below either anchor [m]. */
const EDGE_DEPTH = 1;

export type Profile = readonly (readonly [distance: string, height: string])[];
export type LowestReading =
  | { readonly ok: true; readonly profile: Profile }
  | {
      readonly ok: false;
      readonly at: "lowest" | "lowestAt" | "shape";
      readonly kind: "depth" | "spot" | "spotOutside" | "shape";
      readonly values: Readonly<Record<string, string | number>>;
      readonly remedy?: string;
    };

interface Site {
  /** [m] */
  readonly span: number;
  readonly rise: number;
}

const metre = (value: number) => quantityText(centimetre(value), "length", "1 m");

/** Slopes: straight from both anchors to the lowest point. Walls: steep from either edge to a level floor. */
export const GROUND_SHAPES = ["slopes", "walls"] as const;

/** How far a wall leans back over its height: ten degrees from upright [-]. */
const WALL_LEAN = Math.tan(Math.PI / 18);

/** `depth`: below anchor A, as "25 m"; `spot`: "middle", or a distance from anchor A; it says nothing of a level floor. */
export function lowestProfile(depth: string, spot: string, shape: string, site: Site): LowestReading {
  if (shape !== "slopes" && shape !== "walls") {
    return { ok: false, at: "shape", kind: "shape", values: { got: shape }, remedy: "slopes" };
  }
  const x = shape === "walls" ? site.span / 2 : spotOf(spot, site.span);
  if (x === undefined) return { ok: false, at: "lowestAt", kind: "spot", values: { got: spot }, remedy: "middle" };
  if (x <= 0 || x >= site.span) {
    const values = { got: spot, span: metre(site.span) };
    return { ok: false, at: "lowestAt", kind: "spotOutside", values, remedy: "middle" };
  }
  const read = parseQuantity(depth, "length");
  const values = { got: depth };
  if (!read.ok) return { ok: false, at: "lowest", kind: "depth", values, ...unitGuess(depth) };
  const [edgeA, edgeB] = [-EDGE_DEPTH, site.rise - EDGE_DEPTH];
  if (-read.value >= Math.min(edgeA, edgeB, chordHeight(site, x) - EDGE_DEPTH)) {
    return {
      ok: false,
      at: "lowest",
      kind: "depth",
      values,
      ...(read.value < 0 ? { remedy: metre(-read.value) } : {}),
    };
  }
  const foot = Math.min(WALL_LEAN * read.value, site.span / 3);
  const bottom = shape === "walls" ? [foot, site.span - foot] : [x];
  const floor = bottom.map((place) => [metre(place), metre(-read.value)] as const);
  return { ok: true, profile: [["0 m", metre(edgeA)], ...floor, [metre(site.span), metre(edgeB)]] };
}

const unitGuess = (text: string) => (/^\d+(?:\.\d+)?$/.test(text.trim()) ? { remedy: `${text.trim()} m` } : {});

function spotOf(text: string, span: number): number | undefined {
  if (/^(?:in the )?middle$/i.test(text.trim())) return span / 2;
  const read = parseQuantity(text, "length");
  return read.ok ? read.value : undefined;
}
