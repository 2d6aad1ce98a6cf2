/** The angle between two legs of an anchor, from their lengths and how far apart their points are: the law of cosines. */
import { fieldAt, legForceFactor, parseQuantity, type RigFact } from "@secondline/rig";
import { metreText } from "../metres.ts";

export const LEG_FIELDS = ["legOne", "legTwo", "apart"] as const;
export type LegField = (typeof LEG_FIELDS)[number];

export type LegsReading =
  | {
      readonly ok: true;
      /** [rad] */
      readonly angle: number;
      /** The angle as one would type it, rounded up to the degree: a wider angle loads the legs more. */
      readonly text: string;
      /** Force in each of two equal legs over that on the anchor [-]. */
      readonly share: number;
    }
  | {
      readonly ok: false;
      readonly isWaiting: boolean;
      readonly faults: readonly (
        | { readonly kind: "unread"; readonly at: LegField; readonly message: RigFact }
        | {
            readonly kind: "notPositive" | "noTriangle" | "legsFlat";
            readonly at: LegField;
            readonly values: Readonly<Record<string, string>>;
          }
      )[];
    };

type LegsFault = Extract<LegsReading, { ok: false }>["faults"][number];

const DEGREE = Math.PI / 180;

export function readLegs(texts: Readonly<Partial<Record<LegField, string>>>): LegsReading {
  const faults: LegsFault[] = [];
  const lengths: number[] = [];
  for (const at of LEG_FIELDS) {
    const text = texts[at]?.trim() ?? "";
    if (text === "") continue;
    const read = parseQuantity(text, "length");
    if (!read.ok) faults.push({ kind: "unread", at, message: read.message });
    else if (!(read.value > 0)) faults.push({ kind: "notPositive", at, values: { got: text } });
    else lengths.push(read.value);
  }
  const isWaiting = LEG_FIELDS.some((at) => (texts[at]?.trim() ?? "") === "");
  if (faults.length > 0 || isWaiting) return { ok: false, faults, isWaiting };
  const [one, two, apart] = lengths as [number, number, number];
  const values = { low: metreText(Math.abs(one - two)), high: metreText(one + two) };
  const none = (kind: "noTriangle" | "legsFlat"): LegsReading => ({
    ok: false,
    isWaiting: false,
    faults: [{ kind, at: "apart", values }],
  });
  if (apart > one + two || apart < Math.abs(one - two)) return none("noTriangle");
  const cosine = (one ** 2 + two ** 2 - apart ** 2) / (2 * one * two);
  const angle = Math.acos(Math.min(Math.max(cosine, -1), 1));
  const degrees = Math.ceil(angle / DEGREE - 1e-6);
  const field = fieldAt("anchorA.legAngle");
  if (field?.kind === "quantity" && field.limits && degrees * DEGREE > field.limits[1]) return none("legsFlat");
  return { ok: true, angle, text: `${degrees} deg`, share: legForceFactor(degrees * DEGREE) };
}
