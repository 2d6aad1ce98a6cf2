/** Another span or rise: anchor B moves, and the ground below the line is stretched and tilted along with it. */
import { confirm, editDocument, parseQuantity, quantityText, valueAt } from "@secondline/rig";
import type { WrittenRig } from "../documents/documents.ts";
import { centimetre } from "../metres.ts";

/** `text` as typed; while it cannot be read, only the field itself changes. */
export function moveAnchorB(document: WrittenRig, path: "span" | "rise", text: string): WrittenRig {
  const edited = confirm(editDocument(document, path, text.trim() === "" ? undefined : text), [path]);
  const span = lengthAt(document, "span", undefined);
  const nextSpan = lengthAt(edited, "span", undefined);
  const rise = lengthAt(document, "rise", "0 m");
  const nextRise = lengthAt(edited, "rise", "0 m");
  const ground = valueAt(document, "ground");
  if (!span || !nextSpan || rise === undefined || nextRise === undefined || !Array.isArray(ground)) return edited;
  const moved = ground.map((point) => movePoint(point, nextSpan / span, (nextRise - rise) / span));
  return editDocument(edited, "ground", moved);
}

/** Span and rise at once. */
export const placeAnchorB = (
  document: WrittenRig,
  { span, rise }: { readonly span: string; readonly rise: string },
): WrittenRig => moveAnchorB(moveAnchorB(document, "span", span), "rise", rise);

/** A point that cannot be read stays as it is: its fault is told beside it. */
function movePoint(point: unknown, stretch: number, tilt: number): unknown {
  if (!Array.isArray(point)) return point;
  const [x, z] = point.map((value) => parseQuantity(value, "length"));
  if (!x?.ok || !z?.ok) return point;
  // A profile is not known better than to the centimetre.
  return [
    stretch === 1 ? point[0] : quantityText(centimetre(x.value * stretch), "length", String(point[0])),
    tilt === 0 ? point[1] : quantityText(centimetre(z.value + tilt * x.value), "length", String(point[1])),
  ];
}

function lengthAt(document: WrittenRig, path: string, fallback: string | undefined): number | undefined {
  const read = parseQuantity(valueAt(document, path) ?? fallback, "length");
  return read.ok ? read.value : undefined;
}
