/** A prediction beside the run's number, in words. Both in the same unit. */
import { quantity } from "@secondline/words";
import { say } from "./words.ts";

/** Nearer than this is close: the simulation itself is not surer [-]. */
const CLOSE_SHARE = 0.15;

export function judgement(predicted: number, result: number, resultWords: string): string {
  if (!(predicted > 0)) return say(result > 0 ? "judge.fromNothing" : "judge.exact", { result: resultWords });
  const ratio = result / predicted;
  const off = Math.abs(ratio - 1);
  if (off < 0.005) return say("judge.exact");
  if (off < CLOSE_SHARE) return say("judge.close", { percent: `${Math.max(1, Math.round(off * 100))} %` });
  if (ratio > 1) return say("judge.more", { ratio: quantity.rounded(ratio, ratio < 10 ? 1 : 0, "nearest") });
  return say("judge.less", { percent: `${Math.round(ratio * 100)} %` });
}
