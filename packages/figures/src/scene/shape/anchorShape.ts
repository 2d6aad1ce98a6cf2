/** Places of an anchor's rock points. */
import type { Anchor } from "@secondline/engine";
import type { AnchorSide } from "@secondline/rig";
import type { Gap } from "./gap.ts";

export interface AnchorShape {
  readonly side: "A" | "B";
  /** Master point at rest, xyz [m]. */
  readonly master: Float32Array;
  /** Rock points, xyz each [m]. */
  readonly rock: Float32Array;
  readonly kinds: readonly AnchorSide["points"][number]["kind"][];
}

/** Legs of the solved problem if it has any; otherwise the rig's legs, fanned out over the rock behind the edge. */
export function anchorShape(side: "A" | "B", rig: AnchorSide, solved: Anchor | undefined, gap: Gap): AnchorShape {
  const out = side === "A" ? -1 : 1;
  const master = Float32Array.of(side === "A" ? 0 : gap.span, 0, side === "A" ? 0 : gap.rise);
  const edge = side === "A" ? gap.edgeA : gap.edgeB;
  const count = Math.max(solved?.legs?.length ?? rig.points.length, 1);
  const rock = new Float32Array(count * 3);
  for (let i = 0; i < count; i++) {
    const leg = solved?.legs?.[i]?.rock;
    const angle = count === 1 ? 0 : rig.legAngle * (i / (count - 1) - 0.5);
    const length = Math.max(rig.legLength, 0.4);
    const drop = Math.min(Math.max(master[2]! - edge - 0.06, 0), 0.7 * length);
    const flat = Math.sqrt(length * length - drop * drop);
    rock[3 * i] = master[0]! + (leg ? leg[0] : out * flat * Math.cos(angle));
    rock[3 * i + 1] = master[1]! + (leg ? leg[1] : flat * Math.sin(angle));
    rock[3 * i + 2] = master[2]! + (leg ? leg[2] : -drop);
  }
  const kinds = Array.from({ length: count }, (_, i) => rig.points[i]?.kind ?? "bolt");
  return { side, master, rock, kinds };
}
