import { quantity } from "@secondline/words";
import { sayPage } from "@secondline/words/page/page";

/** "anchor A", "the middle" or a length from anchor A. */
export function placeWords(at: number, span: number): string {
  if (at <= 0) return sayPage("placeChoice.anchor");
  if (at >= 1) return sayPage("placeChoice.anchorB");
  if (Math.abs(at - 0.5) < 1e-6) return sayPage("placeChoice.middle");
  return sayPage("placeChoice.fromA", { length: quantity.length(at * span) });
}
