/** Values of a rig's document that nobody has confirmed: where they are, and the edits that make and take their marks. */
import { marksIn } from "@secondline/rig";
import type { WrittenRig } from "../documents/documents.ts";
import type { Sandbox } from "../inHand/sandbox.ts";
import { pathsIn } from "../newRig/marks.ts";

/** Whether a path is that of the group, or lies in it. */
export const isInGroup = (path: string, group: string): boolean =>
  path === group || path.startsWith(`${group}.`) || path.startsWith(`${group}[`);

/** Marks in any of these groups; all marks if no group is named. */
export const marksInGroups = (document: WrittenRig, groups?: readonly string[]): readonly string[] =>
  marksIn(document).filter((path) => !groups || groups.some((group) => isInGroup(path, group)));

/** Takes the marks of these values away, as one step; returns how many marks are left. */
export function confirmValues({ store, actions }: Sandbox, paths: readonly string[], label: string): number {
  const left = marksIn(store.getState().document.history.present.rig).filter((path) => !paths.includes(path));
  actions.edit("unconfirmed", left.length === 0 ? undefined : left, label);
  return left.length;
}

export interface NewPart {
  /** Path of the part. */
  readonly at: string;
  /** The new part. None of its values is confirmed until somebody has checked it. */
  readonly part: unknown;
  /** What is written with it, and where. */
  readonly whole: { readonly path: string; readonly value: unknown };
  readonly label: string;
}

/** Puts in a new part and marks its values, as one step. */
export function addPart({ store, actions }: Sandbox, { at, part, whole, label }: NewPart): void {
  const group = `add ${at}`;
  actions.edit(whole.path, whole.value, label, group);
  const marks = marksIn(store.getState().document.history.present.rig);
  actions.edit("unconfirmed", [...new Set([...marks, ...pathsIn(at, part)])], label, group);
  actions.finishEdit();
}
