/** Edits of a rig's document that change several values in one step. */
import { marksIn, valueAt } from "@secondline/rig";
import { sayRigSheet } from "@secondline/words/page/rigSheet";
import type { Sandbox } from "../inHand/sandbox.ts";
import { addPart } from "./marks.ts";
import { newJoint } from "./rigSheet.ts";

/** Puts another profile of the ground in. `isGuess`: nobody vouches for it until somebody has looked at it. */
export function putGround(
  { store, actions }: Sandbox,
  profile: readonly unknown[],
  label: string,
  isGuess = false,
): void {
  const marks = marksIn(store.getState().document.history.present.rig);
  const group = sayRigSheet("groundFields.groundPoints");
  actions.edit("ground", profile, label, group);
  // One point more or less confirms none of the others.
  if (isGuess || marks.includes("ground"))
    actions.edit("unconfirmed", [...new Set([...marks, "ground"])], label, group);
  actions.finishEdit();
}

/** Ties connections, or tapes, at these places of the span [-] in place of those that there are, all like the first of them. */
export function spreadJoints(sandbox: Sandbox, parts: "connections" | "tapes", places: readonly number[]): void {
  const at = `backup.${parts}`;
  const written = valueAt(sandbox.store.getState().document.history.present.rig, at);
  const [first] = Array.isArray(written) ? (written as object[]) : [];
  const list = places.map((place) => ({ ...(first ?? newJoint(parts)), at: place }));
  const label = sayRigSheet(`backupFields.${parts}.count`, { count: list.length });
  // Where there is one to be like, its marks go with its values; the strength of the first is nobody's.
  if (first || list.length === 0) sandbox.actions.edit(at, list.length === 0 ? undefined : list, label);
  else {
    const part = list.map(({ at: _, ...one }) => one);
    addPart(sandbox, { at, part, whole: { path: at, value: list }, label });
  }
}
