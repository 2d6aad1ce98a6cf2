/** What must be read of strengths that count somebody's own judgement, or a factor that raises them. */
import { formatRatio } from "@secondline/rig";
import { OWN_NAME, type PartStrength } from "@secondline/strength";
import type { PartOutcome } from "./outcome.ts";
import { fixedDown } from "./rounding.ts";

export interface Judged {
  readonly part: string;
  readonly factor: string;
  /** Central value [-]. */
  readonly value: number;
  readonly reason: string;
  /** Least margin of the part, the factor counted in [-]. */
  readonly margin?: number;
}

/** Factors of all parts, and of all places on webbing, that a reader must be told of; each once per part. */
export function judgedParts(parts: readonly PartStrength[], outcomes: readonly PartOutcome[]): readonly Judged[] {
  return parts.flatMap((part) => {
    const factors = [...part.factors, ...(part.zones ?? []).flatMap((zone) => zone.factors)];
    const told = factors.filter(({ name, flagged }) => flagged || name === OWN_NAME);
    const margin = outcomes.find(({ id }) => id === part.id)?.margin;
    const found = told.map(
      ({ name, value, basis }): Judged => ({
        part: part.name,
        factor: name,
        value,
        reason: basis.note,
        ...(margin === undefined ? {} : { margin }),
      }),
    );
    return [...new Map(found.map((one) => [`${one.factor} ${one.value} ${one.reason}`, one])).values()];
  });
}

/** Parts that an own judgement raises, with its factor: said in the verdict itself. */
export const raisedByHand = (judged: readonly Judged[]): string[] =>
  judged
    .filter(({ factor, value }) => factor === OWN_NAME && value > 1)
    .map(({ part, value }) => `${part} × ${formatRatio(value)}`);

/** What raises a strength comes first, each in a sentence of its own; doubts together in one. */
export function judgementCautions(judged: readonly Judged[]): string[] {
  const raised = judged.filter(({ value }) => value > 1);
  const doubts = judged.filter(({ value }) => value <= 1);
  const list = doubts.map(({ part, value, reason }) => `${part} × ${formatRatio(value)} (${reason})`);
  return [...raised.map(raising), ...(list.length > 0 ? [`Own judgement counts in: ${list.join("; ")}.`] : [])];
}

function raising({ part, factor, value, reason, margin }: Judged): string {
  const without =
    margin === undefined ? "" : ` Without it the margin of this part would be ${fixedDown(margin / value, 2)}.`;
  return `RAISED: ${part} counts as ${formatRatio(value)} times as strong as it else would (${factor === OWN_NAME ? "" : `${factor}: `}${reason}).${without}`;
}
