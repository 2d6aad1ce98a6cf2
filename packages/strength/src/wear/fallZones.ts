/** Fall zones laid over one another: where they overlap, their falls add. */
import type { WearMark } from "./webbingState.ts";

interface Zone {
  readonly from: number;
  readonly to: number;
  readonly falls: number;
}

/** The same falls as zones that do not overlap. */
export function fallZones(marks: readonly WearMark[]): Extract<WearMark, { kind: "fallZone" }>[] {
  return laidOver(marks.filter((mark) => mark.kind === "fallZone"));
}

/** The same falls as zones that do not overlap. Other fields of a zone are taken from the first zone that lies there. */
export function laidOver<Z extends Zone>(zones: readonly Z[]): Z[] {
  const borders = [...new Set(zones.flatMap((z) => [z.from, z.to]))].sort((a, b) => a - b);
  return borders.slice(1).flatMap((to, i) => {
    const from = borders[i]!;
    const here = zones.filter((z) => z.from < to && z.to > from);
    const falls = here.reduce((sum, z) => sum + z.falls, 0);
    // A zone of no falls says that there were none.
    return here.length > 0 ? [{ ...here[0]!, from, to, falls }] : [];
  });
}
