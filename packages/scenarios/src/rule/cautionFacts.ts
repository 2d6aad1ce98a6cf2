/** What must be read beside a verdict, as facts; worded elsewhere, once. */
import type { Note, PartId, Rig } from "@secondline/rig";
import type { PartStrength } from "@secondline/strength";
import { OWN_NAME } from "@secondline/strength";
import { legShare } from "../run/anchorLegs.ts";
import { anchorSide } from "../singles/whenGone.ts";

export interface JudgedFactor {
  readonly part: PartId;
  readonly factor: string;
  /** The user's own judgement, not a factor known to raise strength. */
  readonly own: boolean;
  /** Central value [-]. */
  readonly value: number;
  readonly reason: Note;
  /** Least margin of the part, the factor counted in [-]. */
  readonly margin?: number;
}

export interface AnchorFacts {
  readonly anchor: "A" | "B";
  readonly points: number;
  /** Between the outermost legs [rad]. */
  readonly legAngle: number;
  /** Share of the load that each of two legs is taken to carry [-]. */
  readonly share: number;
  /** E of the anchor as a whole in its worst event [N]. */
  readonly demand: number;
  /** The weakest of several points, and the ratio of its R to the E of the whole anchor [-]. */
  readonly alone?: { readonly part: PartId; readonly margin: number; readonly required: number };
}

export interface Slips {
  readonly part: Extract<PartId, "endA" | "endB">;
  readonly above: number;
  readonly whatIfs: number;
}

export type CautionFact =
  /** Always: a model, textiles hide their damage, do not rig from it alone. */
  | { readonly kind: "general" }
  | { readonly kind: "invented" }
  /** Values at these paths of the rig's file that nobody has confirmed. */
  | { readonly kind: "unconfirmed"; readonly paths: readonly string[] }
  | { readonly kind: "scatter" }
  | { readonly kind: "judged"; readonly judged: readonly JudgedFactor[] }
  | { readonly kind: "unfounded"; readonly parts: number; readonly of: number }
  | { readonly kind: "failedRuns"; readonly whatIfs: readonly number[] }
  /** Weblocks that let webbing through in so many what-ifs, and above which load [N]: loads end there. */
  | { readonly kind: "slips"; readonly weblocks: readonly Slips[] }
  | { readonly kind: "chance" }
  | { readonly kind: "partial"; readonly run: number; readonly of: number }
  | { readonly kind: "coarse" }
  | { readonly kind: "noBackup" }
  | { readonly kind: "anchors"; readonly anchors: readonly AnchorFacts[] }
  | { readonly kind: "noGround" }
  | { readonly kind: "endedOnGround"; readonly whatIfs: number }
  | { readonly kind: "notModelled" };

/** Factors of all parts, and of all places on webbing, that a reader must be told of; each once per part. */
export function judgedFactors(
  parts: readonly PartStrength[],
  margins: ReadonlyMap<string, number>,
): readonly JudgedFactor[] {
  return parts.flatMap((part) => {
    const factors = [...part.factors, ...(part.zones ?? []).flatMap((zone) => zone.factors)];
    const margin = margins.get(part.id);
    const found = factors
      .filter(({ name, flagged }) => flagged || name === OWN_NAME)
      .map(
        ({ name, value, basis }): JudgedFactor => ({
          part: part.id as PartId,
          factor: name,
          own: name === OWN_NAME,
          value,
          reason: basis.note,
          ...(margin === undefined ? {} : { margin }),
        }),
      );
    return [...new Map(found.map((one) => [JSON.stringify([one.factor, one.value, one.reason]), one])).values()];
  });
}

/** `demands`: E of either anchor as a whole [N]. */
export function anchorFacts(
  rig: Rig,
  parts: readonly PartStrength[],
  demands: Readonly<Record<"A" | "B", number>>,
): readonly AnchorFacts[] {
  return (["A", "B"] as const).map((anchor): AnchorFacts => {
    const side = anchorSide(rig, anchor);
    const points = parts.filter(({ id }) => id.startsWith(`anchor${anchor}.points.`));
    const [weakest] = [...points].sort((a, b) => a.strength5 - b.strength5);
    const shared = points.length > 1 && weakest !== undefined && demands[anchor] > 0;
    return {
      anchor,
      points: side.points.length,
      legAngle: side.legAngle,
      share: legShare(side),
      demand: demands[anchor],
      ...(shared
        ? {
            alone: {
              part: weakest.id as PartId,
              margin: weakest.strength5 / demands[anchor],
              required: rig.requiredAfterFailure,
            },
          }
        : {}),
    };
  });
}
