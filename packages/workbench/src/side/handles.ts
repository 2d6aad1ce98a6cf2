/** The handles in a drawing of a rig from the side, and which handle a pointer means. */

import { MOST_HANDLES } from "./ground.ts";
import { type Held, placeOfHeld } from "./held.ts";
import type { Projection } from "./projection.ts";
import type { SideView } from "./side.ts";

/** So far around it a handle can be taken hold of [px]. */
export const HANDLE_REACH = 22;

/** None on a profile of very many points: they would lie on one another. */
export const handlesOf = (side: SideView, kinds: readonly Held["kind"][]): readonly Held[] =>
  kinds.flatMap((kind) => {
    const list = kind === "ground" ? side.points : side.connections;
    return list.length > MOST_HANDLES ? [] : list.map((_, index) => ({ kind, index }));
  });

export const handleName = ({ kind, index }: Held): string => `${kind} ${index}`;

/** Where a handle lies in the drawing [px]. */
export function handleAt(side: SideView, held: Held, { px, py, lineAt }: Projection): readonly [x: number, y: number] {
  const [distance, level] = placeOfHeld(side, held);
  return [px(distance), py(held.kind === "ground" ? level : lineAt(distance))];
}

/** The handle nearest to a place in the drawing, and how far it lies from it; undefined where none can be reached [px]. */
export function nearestHandle(
  side: SideView,
  handles: readonly Held[],
  projection: Projection,
  [x, y]: readonly [number, number],
): { readonly held: Held; readonly dx: number; readonly dy: number } | undefined {
  const near = handles
    .map((held) => {
      const [hx, hy] = handleAt(side, held, projection);
      return { held, dx: hx - x, dy: hy - y, away: Math.hypot(hx - x, hy - y) };
    })
    .sort((a, b) => a.away - b.away)[0];
  return near && near.away <= HANDLE_REACH ? near : undefined;
}

/** Where the words of a handle stand: beside it and within the drawing [px]. */
export function wordsBeside(text: string, [x, y]: readonly [number, number], { width, height }: Projection) {
  const half = text.length * 3.4 + 8;
  const middle = Math.min(Math.max(x, half + 2), Math.max(width - half - 2, half + 2));
  const top = y > 42 ? Math.min(y, height) - 40 : Math.max(y, -18) + 20;
  return { left: middle - half, width: 2 * half, middle, top };
}
