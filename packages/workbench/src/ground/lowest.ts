/** A ground profile of one number: how deep the lowest point lies, and where. Straight from both anchors down to it. */
import { chordHeight, parseQuantity, quantityText } from "@secondline/rig";

/** The rock's edge below either anchor [m]. */
const EDGE = 1;

export type Profile = readonly (readonly [distance: string, height: string])[];
export type LowestReading =
  | { readonly ok: true; readonly profile: Profile }
  | {
      readonly ok: false;
      readonly at: "lowest" | "lowestAt";
      readonly kind: "depth" | "spot" | "spotOutside";
      readonly values: Readonly<Record<string, string | number>>;
      readonly remedy?: string;
    };

interface Site {
  /** [m] */
  readonly span: number;
  readonly rise: number;
}

const metre = (value: number) => quantityText(Math.round(value * 100) / 100, "length", "1 m");

/** `depth`: below anchor A, as "25 m"; `spot`: "middle", or a distance from anchor A. */
export function lowestProfile(depth: string, spot: string, site: Site): LowestReading {
  const x = spotOf(spot, site.span);
  if (x === undefined) return { ok: false, at: "lowestAt", kind: "spot", values: { got: spot }, remedy: "middle" };
  if (x <= 0 || x >= site.span) {
    const values = { got: spot, span: metre(site.span) };
    return { ok: false, at: "lowestAt", kind: "spotOutside", values, remedy: "middle" };
  }
  const read = parseQuantity(depth, "length");
  const values = { got: depth };
  if (!read.ok) return { ok: false, at: "lowest", kind: "depth", values, ...unitGuess(depth) };
  const edges = [-EDGE, site.rise - EDGE] as const;
  const line = chordHeight(site, x);
  if (-read.value >= line - EDGE) {
    return {
      ok: false,
      at: "lowest",
      kind: "depth",
      values,
      ...(read.value < 0 ? { remedy: metre(-read.value) } : {}),
    };
  }
  return {
    ok: true,
    profile: [
      ["0 m", metre(edges[0])],
      [metre(x), metre(-read.value)],
      [metre(site.span), metre(edges[1])],
    ],
  };
}

const unitGuess = (text: string) => (/^\d+(?:\.\d+)?$/.test(text.trim()) ? { remedy: `${text.trim()} m` } : {});

function spotOf(text: string, span: number): number | undefined {
  if (/^(?:in the )?middle$/i.test(text.trim())) return span / 2;
  const read = parseQuantity(text, "length");
  return read.ok ? read.value : undefined;
}
