/** From positions on a webbing to positions in the section it hangs in. */
import type { Placement } from "./placement.ts";

/** Natural metres from the A end of the section, for a position from the marked end [m]. */
export function sectionPosition(placement: Pick<Placement, "markedEnd" | "from" | "to">, position: number): number {
  return placement.markedEnd === "A" ? position - placement.from : placement.to - position;
}
