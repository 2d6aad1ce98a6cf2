/** Puts the state of one part other than webbing into a rig. */
import { type Condition, type OwnJudgement, partIds, type Rig } from "@secondline/rig";
import { noteFact } from "../noteFacts.ts";
import { added, addedCondition } from "./addedCondition.ts";
import type { Worn } from "./applyWear.ts";
import { HARD_KINDS } from "./hardKinds.ts";
import { lateNotes } from "./lateNote.ts";
import { needFacts, ownOf } from "./needWords.ts";
import type { PartState } from "./partState.ts";

/** The rig with the part's state; says so when the rig has no such part. */
export function wearPart(worn: Worn, state: PartState): Rig {
  const { rig, notes } = worn;
  const name = noteFact("part.named", { part: state.part });
  const needs = needFacts({ name, needs: state.needs });
  const put = <T extends Conditioned>(part: T): T => {
    const counted = conditionOver(part.condition ?? {}, state);
    const condition = { ...counted, ...(needs.length === 0 ? {} : { needsInspection: needs }) };
    const own = ownOf(state.doubts, part.own);
    return { ...part, condition, ...(own === undefined ? {} : { own }) };
  };
  const found = withPart(rig, state.part, put);
  if (found === undefined) {
    const { part } = state;
    if (isLost(rig, state))
      worn.needs.push(noteFact("record.unknownPart", { part }, noteFact("record.notCounted", {})));
    else notes.push(noteFact("record.unknownPart", { part }));
    worn.needs.push(...needs);
    return rig;
  }
  worn.needs.push(...needs);
  if (!state.reach.fromNew && isUsed(rig, state.part)) {
    notes.push(...lateNotes(name, state.reach, [partOf(rig, state.part)?.condition]));
  }
  const { replacedOn: on, condition } = state;
  if (on !== undefined && condition.ageYears === undefined && !isHard(rig, state.part)) {
    notes.push(noteFact("record.replacedUnmade", { name, on: { day: on } }));
  }
  return state.part === "leash" ? { ...found, leash: withFalls(found.leash, state) } : found;
}

/** Whether the rig may miss wear that a record gives for a part that cannot be put into the rig. */
function isLost(rig: Rig, { part, reach, placed, up, doubts }: PartState): boolean {
  if (reach.begun === undefined || (placed && !up)) return false;
  const isOfNoBackup = rig.backup === undefined && part.startsWith("connection.");
  return doubts.length > 0 || (!isOfNoBackup && !partIds(rig).some((id) => id === part));
}

/** Whether the rig's file says, or leaves open, that time or falls have weakened a part. They do not weaken metal and trees. */
function isUsed(rig: Rig, id: string): boolean {
  const isNew = isHard(rig, id) || partOf(rig, id)?.condition?.monthsOutside === 0;
  return !isNew || (id === "leash" && rig.leash.falls !== 0);
}

function isHard(rig: Rig, id: string): boolean {
  const part = partOf(rig, id);
  return id.startsWith("ring") || (part !== undefined && "kind" in part && HARD_KINDS.has(part.kind));
}

/** If the record follows a part from new, the record alone counts; else it adds to the file. */
function conditionOver(written: Condition, { condition, recorded, reach }: PartState): Condition {
  return reach.fromNew ? condition : addedCondition(written, { ...condition, ...recorded, reach });
}

function withFalls({ falls: written, ...leash }: Rig["leash"], { falls, recorded, reach }: PartState): Rig["leash"] {
  const counted = reach.fromNew ? falls : added(written, recorded.falls);
  return { ...leash, ...(counted === undefined ? {} : { falls: counted }) };
}

interface Conditioned {
  readonly condition?: Condition;
  readonly own?: OwnJudgement;
}

type Put = <T extends Conditioned>(part: T) => T;

/** The rig with one part put anew; undefined when it has no such part. */
export function withPart(rig: Rig, part: string, put: Put): Rig | undefined {
  const [group, list, index] = part.split(".");
  if (part === "leash") return { ...rig, leash: put(rig.leash) };
  if (part === "harness") return { ...rig, harness: put(rig.harness) };
  if (group === "ring") {
    const rings = withReplaced(rig.rings, Number(list ?? 0), put);
    return rings && { ...rig, rings };
  }
  if (group === "connection" && rig.backup !== undefined) {
    const connections = withReplaced(rig.backup.connections, Number(list), put);
    return connections && { ...rig, backup: { ...rig.backup, connections } };
  }
  if ((group === "anchorA" || group === "anchorB") && (list === "hardware" || list === "points")) {
    const parts = withReplaced(rig[group][list], Number(index), put);
    return parts && { ...rig, [group]: { ...rig[group], [list]: parts } };
  }
  return undefined;
}

/** One part as the rig has it; undefined when it has no such part. */
export function partOf(rig: Rig, id: string): Conditioned | undefined {
  const found: Conditioned[] = [];
  withPart(rig, id, (part) => {
    found.push(part);
    return part;
  });
  return found[0];
}

/** The list with one part put anew; undefined when it has no such part. */
function withReplaced<T extends object>(parts: readonly T[], at: number, put: (part: T) => T): T[] | undefined {
  if (parts[at] === undefined) return undefined;
  return parts.map((part, i) => (i === at ? put(part) : part));
}
