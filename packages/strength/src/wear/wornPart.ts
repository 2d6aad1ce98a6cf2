/** Puts the state of one part other than webbing into a rig. */
import type { Condition, OwnJudgement, Rig } from "@secondline/rig";
import type { Worn } from "./applyWear.ts";
import { needSentences, ownOf } from "./needWords.ts";
import type { PartState } from "./partState.ts";

/** The rig with the part's state; says so when the rig has no such part. */
export function wearPart(worn: Worn, state: PartState): Rig {
  const { rig, notes } = worn;
  const needs = needSentences({ name: `Part "${state.part}"`, needs: state.needs });
  const condition = { ...state.condition, ...(needs.length === 0 ? {} : { needsInspection: needs }) };
  const put = <T extends { readonly condition?: Condition; readonly own?: OwnJudgement }>(part: T): T => {
    const own = ownOf(state.doubts, part.own);
    return { ...part, condition, ...(own === undefined ? {} : { own }) };
  };
  const found = withPart(rig, state, put);
  if (found === undefined) {
    notes.push(
      `The record speaks of a part "${state.part}" that this rig does not have, or whose wear is kept elsewhere.`,
    );
    return rig;
  }
  worn.needs.push(...needs);
  return found;
}

type Put = <T extends { readonly condition?: Condition; readonly own?: OwnJudgement }>(part: T) => T;

function withPart(rig: Rig, { part, falls }: PartState, put: Put): Rig | undefined {
  const [group, list, index] = part.split(".");
  if (part === "leash") return { ...rig, leash: { ...put(rig.leash), falls } };
  if (part === "harness") return { ...rig, harness: put(rig.harness) };
  if (group === "ring") {
    const rings = replaced(rig.rings, Number(list ?? 0), put);
    return rings && { ...rig, rings };
  }
  if (group === "connection" && rig.backup !== undefined) {
    const connections = replaced(rig.backup.connections, Number(list), put);
    return connections && { ...rig, backup: { ...rig.backup, connections } };
  }
  if ((group === "anchorA" || group === "anchorB") && (list === "hardware" || list === "points")) {
    const parts = replaced(rig[group][list], Number(index), put);
    return parts && { ...rig, [group]: { ...rig[group], [list]: parts } };
  }
  return undefined;
}

/** The list with one part put anew; undefined when it has no such part. */
function replaced<T extends object>(parts: readonly T[], at: number, put: (part: T) => T): T[] | undefined {
  if (parts[at] === undefined) return undefined;
  return parts.map((part, i) => (i === at ? put(part) : part));
}
