/** A place on the line as it is typed, slid and told. */
import { parseQuantity } from "@secondline/rig";
import { quantity } from "@secondline/words";
import { tellFault } from "@secondline/words/faults";
import { sayVerdict } from "@secondline/words/page/verdict";

/** `ends`: a place at an anchor itself is one. */
export function readPlace(text: string, span: number, ends: boolean): { at?: number; fault?: string } {
  const read = parseQuantity(text, "length");
  if (!read.ok) return { fault: tellFault(read.message) };
  const at = read.value / span;
  const inside = ends ? at >= 0 && at <= 1 : at > 0 && at < 1;
  return inside ? { at } : { fault: sayVerdict("placeFields.outside", { length: quantity.length(span) }) };
}

/** A slider step of about a hundredth of the span, in round numbers [m]. */
export function stepFor(span: number): number {
  return span > 200 ? 1 : span > 40 ? 0.5 : 0.1;
}
