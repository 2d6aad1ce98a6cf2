/** The finding and the judgement of somebody who looked at a webbing or part. */
import * as z from "zod";
import { type RecordIssue, recordFault } from "./faults.ts";
import { recordFact } from "./recordFacts.ts";
import { quantity, text } from "./values.ts";

export const judgementShape = {
  by: text,
  found: text,
  /** Sound: as good as the record says. Doubtful: a factor on its strength, or the cautious one. Unfit: it must come down. */
  judgement: z.enum(["sound", "doubtful", "unfit"]),
  factor: quantity("ratio", 0.01, 1, ["0.01", "1"]).optional(),
};

export interface Judgement {
  readonly by: string;
  readonly found: string;
  readonly judgement: "sound" | "doubtful" | "unfit";
  /** Factor on the strength of a doubtful webbing or part; without one the cautious factor is taken [-]. */
  readonly factor?: number;
}

/** A factor belongs to a doubt. */
export function judgementFaults({ judgement, factor }: Judgement, path: string): RecordIssue[] {
  if (factor === undefined || judgement === "doubtful") return [];
  const message = recordFact("factor.noDoubt", { judgement });
  return [recordFault(`${path}.factor`, `${factor}`, recordFact("expected.noFactor", {}), message)];
}
