/** Fall zones laid over one another: where they overlap, their falls add. */
import type { WearMark } from "./webbingState.ts";

type FallZone = Extract<WearMark, { kind: "fallZone" }>;

/** The same falls as zones that do not overlap. */
export function fallZones(marks: readonly WearMark[]): FallZone[] {
  const zones = marks.filter((mark): mark is FallZone => mark.kind === "fallZone");
  const borders = [...new Set(zones.flatMap((z) => [z.from, z.to]))].sort((a, b) => a - b);
  return borders.slice(1).flatMap((to, i) => {
    const from = borders[i]!;
    const here = zones.filter((z) => z.from < to && z.to > from);
    const falls = here.reduce((sum, z) => sum + z.falls, 0);
    // A zone of no falls says that there were none.
    return here.length > 0 ? [{ kind: "fallZone" as const, from, to, falls, since: here[0]!.since }] : [];
  });
}
