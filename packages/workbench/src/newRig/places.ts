/** Where connections are tied, as one says it: "every 15 m", "10 m, 25 m, 40 m", "none". Metres from anchor A. */
import { parseQuantity, quantityText } from "@secondline/rig";
import { metreText } from "../metres.ts";
import { NEAREST_CONNECTION } from "../side/connections.ts";

/** No rig's file has one nearer to an anchor than this, as a share of the span [-]. */
const NEAREST_SHARE = 0.005;

/** More than this nobody ties. */
export const MOST_PLACES = 60;

export type PlacesReading =
  | { readonly ok: true; readonly metres: readonly number[] }
  | {
      readonly ok: false;
      readonly kind: "places" | "placeOutside" | "placesMany";
      readonly values: Readonly<Record<string, string | number>>;
      readonly remedy?: string;
    };

/** Reads where connections are; `span` [m]. */
export function readPlaces(text: string, span: number): PlacesReading {
  const typed = text.trim().toLowerCase();
  if (typed === "none" || typed === "0" || typed === "") return { ok: true, metres: [] };
  const every = /^every\s+(.+)$/.exec(typed);
  const fault = (kind: "places" | "placeOutside" | "placesMany", got: string, remedy?: string): PlacesReading => ({
    ok: false,
    kind,
    values: { got, span: quantityText(span, "length") },
    ...(remedy === undefined ? {} : { remedy }),
  });
  if (every) return evenly(every[1]!, span, fault);
  const metres: number[] = [];
  for (const one of typed.split(/[,;]/).map((part) => part.trim())) {
    const read = parseQuantity(one, "length");
    if (!read.ok) return fault("places", text.trim());
    if (read.value < NEAREST_CONNECTION || read.value > span - NEAREST_CONNECTION)
      return fault("placeOutside", one, "every 15 m");
    metres.push(read.value);
  }
  if (metres.length > MOST_PLACES) return fault("placesMany", String(metres.length));
  return { ok: true, metres: [...new Set(metres)].sort((a, b) => a - b) };
}

/** Places from anchor A on, one every so many metres. */
function evenly(
  text: string,
  span: number,
  fault: (kind: "places" | "placeOutside" | "placesMany", got: string, remedy?: string) => PlacesReading,
): PlacesReading {
  const read = parseQuantity(text, "length");
  if (!read.ok || read.value <= 0) {
    return fault("places", `every ${text}`, /^\d+(?:\.\d+)?$/.test(text) ? `every ${text} m` : undefined);
  }
  // A place on anchor B itself, but for rounding, is none.
  const nearest = Math.max(NEAREST_CONNECTION, NEAREST_SHARE * span);
  const count = Math.floor((span - nearest) / read.value + 1e-9);
  if (count > MOST_PLACES) return fault("placesMany", String(count), `every ${Math.ceil(span / MOST_PLACES)} m`);
  return { ok: true, metres: Array.from({ length: count }, (_, i) => (i + 1) * read.value) };
}

/** Places as one would type them [m]: "12 m, 25.5 m"; "none". */
export const placesText = (metres: readonly number[]): string =>
  metres.length === 0
    ? "none"
    : [...metres]
        .sort((a, b) => a - b)
        .map(metreText)
        .join(", ");
