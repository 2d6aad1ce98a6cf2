/** Names of parts: one table, for every face. */

import { type PartId, partRef, type Rig } from "@secondline/rig";
import type { PartOutcome } from "@secondline/scenarios";
import { broughtIn } from "./broughtEnglish.ts";
import type { Say } from "./language.ts";
import { listed } from "./lists.ts";
import { along } from "./quantity.ts";

const END_KEYS = { weblock: "part.weblock", sewnLoop: "part.sewnLoop", knot: "part.knot" } as const;

/** "Main line", "Connection 2", "Weblock of the backup, A", "Left bolt, anchor B". */
export function partName(say: Say, rig: Rig, id: PartId): string {
  const ref = partRef(id);
  if (!ref) return say("part.unknown", { id });
  switch (ref.kind) {
    case "harness":
      return say("part.harness");
    case "leash":
      return say("part.leash");
    case "ring":
      return rig.rings[ref.index]?.name ?? say("part.unknown", { id });
    case "webbing":
      return say(`part.${ref.line}`);
    case "connection":
      return connectionName(say, rig, ref.index);
    case "end": {
      const end = rig[ref.line]?.[`end${ref.end}`];
      return say(end ? END_KEYS[end.kind] : "part.end", { line: say(`line.${ref.line}`), end: ref.end });
    }
    case "hardware":
    case "point": {
      const side = ref.anchor === "A" ? rig.anchorA : rig.anchorB;
      const part = (ref.kind === "point" ? side.points : side.hardware)[ref.index];
      return part ? say("part.anchor", { name: part.name, anchor: ref.anchor }) : say("part.unknown", { id });
    }
  }
}

/** Connections and tapes are each counted from A, as the rig's file has them. */
function connectionName(say: Say, rig: Rig, index: number): string {
  const all = rig.backup?.connections ?? [];
  const kind = all[index]?.kind ?? "connection";
  const number = all.slice(0, index + 1).filter((one) => one.kind === kind).length;
  return say(kind === "tape" ? "part.tape" : "part.connection", { number });
}

/** What weakens a place, or each of several things that do. */
export const weakness = (reason: string): string => listed(reason.split(" and ").map(broughtIn), "and");

const PLAIN_LINE = "webbing";
const isWebbing = ({ id }: Pick<PartOutcome, "id">) => id === "main" || id === "backup";

/** For a table: "Main line, clamp mark 4.4 m from A", "Leash, figure-eight knot at the ring". */
export function partTitle(say: Say, rig: Rig, part: Pick<PartOutcome, "id" | "weakest">): string {
  const name = partName(say, rig, part.id);
  if (!part.weakest) return name;
  if (part.id === "leash") return say("part.inKnot", { part: name, place: weakness(part.weakest.reason) });
  if (!isWebbing(part)) return name;
  const { at, reason } = part.weakest;
  return say("part.at", { part: name, reason: weakness(reason), distance: along(at) });
}

/** Inside a sentence: "the main line at its clamp mark 4.4 m from A", "connection 2". */
export function partInSentence(say: Say, rig: Rig, part: Pick<PartOutcome, "id" | "weakest">): string {
  const ref = partRef(part.id);
  const name = partName(say, rig, part.id);
  // A name given by a person keeps its own capital; "Connection 2" is a name already.
  if (ref?.kind === "connection") return lowered(name);
  const own = ref?.kind === "ring" || ref?.kind === "hardware" || ref?.kind === "point";
  const small = own ? name : lowered(name);
  if (!part.weakest || !isWebbing(part)) return say("part.the", { part: small });
  const { at, reason } = part.weakest;
  const values = { part: small, reason: weakness(reason), distance: along(at) };
  return say(reason === PLAIN_LINE ? "part.theWhere" : "part.theAt", values);
}

/** Makes a title fit inside a sentence; names such as "A" at its head stay as they are. */
export function lowered(title: string): string {
  const second = title.charAt(1);
  return second !== "" && second === second.toLowerCase() && second !== " "
    ? title.charAt(0).toLowerCase() + title.slice(1)
    : title;
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
