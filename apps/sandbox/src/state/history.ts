/**
 * Undo and redo over an immutable value. Edits copy only what is on the way to the change and share the rest, so keeping
 * whole values costs no more than keeping patches. Knows nothing of rigs.
 */
interface Step<T> {
  /** What was done, as a noun phrase for "Undo …". */
  readonly label: string;
  /** The value on the other side of the step. */
  readonly value: T;
}

export interface History<T> {
  readonly present: T;
  readonly past: readonly Step<T>[];
  readonly future: readonly Step<T>[];
  /** Changes of the same open group join one step: the letters of one field, the travel of one slider. */
  readonly openGroup: string | undefined;
}

/** More steps than anybody walks back; the oldest go first. */
const DEPTH = 200;

export function startHistory<T>(present: T): History<T> {
  return { present, past: [], future: [], openGroup: undefined };
}

/** Takes over `next`; with a `group` equal to the open one the change joins the last step. */
export function record<T>(history: History<T>, label: string, next: T, group?: string): History<T> {
  if (Object.is(next, history.present)) return history;
  const joins = group !== undefined && group === history.openGroup && history.past.length > 0;
  const past = joins ? history.past : [...history.past, { label, value: history.present }].slice(-DEPTH);
  return { present: next, past, future: [], openGroup: group };
}

/** The value before the first change of an open group; the present one when the group is not open. */
export function groupStart<T>(history: History<T>, group: string | undefined): T {
  return group !== undefined && history.openGroup === group
    ? (history.past.at(-1)?.value ?? history.present)
    : history.present;
}

/** The next change starts a step of its own. */
export function closeGroup<T>(history: History<T>): History<T> {
  return history.openGroup === undefined ? history : { ...history, openGroup: undefined };
}

export function undo<T>(history: History<T>): History<T> {
  const step = history.past.at(-1);
  if (!step) return history;
  return {
    present: step.value,
    past: history.past.slice(0, -1),
    future: [{ label: step.label, value: history.present }, ...history.future],
    openGroup: undefined,
  };
}

export function redo<T>(history: History<T>): History<T> {
  const [step, ...future] = history.future;
  if (!step) return history;
  return {
    present: step.value,
    past: [...history.past, { label: step.label, value: history.present }],
    future,
    openGroup: undefined,
  };
}
