/** `--judge`: what the user thinks of a part, said on the command line instead of in the rig file. */
import { judgePart, type OwnJudgement, type Rig, readField } from "@secondline/rig";
import { partStrengths } from "@secondline/strength";
import { CommandFailure, EXIT } from "./failure.ts";

const FORM = /^\s*([\w.]+)\s*(?:=\s*([^:]*?)\s*)?:\s*(\S.*?)\s*$/;

/** The rig with every judgement in it; every fault of them at once. */
export function withJudgements(rig: Rig, texts: readonly string[]): Rig {
  const faults: string[] = [];
  const judged = texts.reduce((done, text) => {
    const found = judge(done, text);
    if (typeof found === "object") return found;
    faults.push(`--judge: got "${text}"; ${found}`);
    return done;
  }, rig);
  if (faults.length > 0) throw new CommandFailure(EXIT.input, faults);
  return judged;
}

/** The rig with one judgement, or what is wrong with it. */
function judge(rig: Rig, text: string): Rig | string {
  const match = FORM.exec(text);
  if (!match) return `expected PART=FACTOR: REASON or PART: REASON. Example: "leash=0.7: looks furry at the ring"`;
  const [, id, written, reason] = match;
  const factor = written === undefined ? undefined : readField("leash.own.factor", written);
  if (factor && !factor.ok) return `the factor: ${factor.issue.message}`;
  const words = readField("leash.own.reason", reason!);
  if (!words.ok) return words.issue.message;
  const own: OwnJudgement = factor ? { factor: factor.si!, reason: reason! } : { reason: reason! };
  return judgePart(rig, id!, own) ?? `there is no part "${id}". Parts: ${partIds(rig).join(", ")}.`;
}

const partIds = (rig: Rig) => partStrengths(rig).map(({ id }) => id);
