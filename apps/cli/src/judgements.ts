/** `--judge`: the user's judgement of a part, given on the command line instead of in the rig file. */
import { isTape, type PartId, partIds, type Rig, readField } from "@secondline/rig";
import type { PartJudgement } from "@secondline/scenarios";
import { listed, lowered, englishWords as words } from "@secondline/words";
import { tellFault } from "@secondline/words/faults";
import { sayOptions } from "@secondline/words/terminal/options";
import { CommandFailure, EXIT } from "./failure.ts";

const JUDGEMENT_PATTERN = /^\s*([\w.]+)\s*(?:=\s*([^:]*?)\s*)?:\s*(\S.*?)\s*$/;

/** Judgements of parts that one of the rigs has; every fault of them at once. */
export function readJudgements(texts: readonly string[], rigs: readonly Rig[]): readonly PartJudgement[] {
  // Parts go by their ids in results: ids of connections count from 0, tapes included.
  const known = new Map(rigs.flatMap((rig) => partIds(rig).map((id) => [id, nameOf(rig, id)] as const)));
  const read = texts.map((text) => ({ text, found: judgement(text, known) }));
  const faults = read.flatMap(({ text, found }) =>
    typeof found === "string" ? [sayOptions("judge.refused", { got: text, why: found })] : [],
  );
  if (faults.length > 0) throw new CommandFailure(EXIT.input, faults);
  return read.flatMap(({ found }) => (typeof found === "string" ? [] : [found]));
}

interface KnownPart {
  readonly name: string;
  readonly isTape: boolean;
}

const nameOf = (rig: Rig, id: PartId): KnownPart => ({
  name: lowered(words.partName(rig, id)),
  isTape: isTape(rig, id),
});

/** One judgement, or its fault. */
function judgement(text: string, known: ReadonlyMap<PartId, KnownPart>): PartJudgement | string {
  const match = JUDGEMENT_PATTERN.exec(text);
  if (!match) return sayOptions("judge.form");
  const [, id, written, reason] = match;
  const factor = written === undefined ? undefined : readField("leash.own.factor", written);
  if (factor && !factor.ok) return sayOptions("judge.factor", { message: tellFault(factor.issue.message) });
  const words = readField("leash.own.reason", reason!);
  if (!words.ok) return tellFault(words.issue.message);
  const part = id as PartId;
  const found = known.get(part);
  if (found === undefined || found.isTape) {
    const parts = listed(
      [...known]
        .filter(([, { isTape }]) => !isTape)
        .map(([one, { name }]) => sayOptions("judge.part", { part: one, name })),
    );
    return found === undefined
      ? sayOptions("judge.noPart", { part, parts })
      : sayOptions("judge.tape", { part, name: found.name, parts });
  }
  return { part, reason: reason!, ...(factor ? { factor: factor.si! } : {}) };
}
