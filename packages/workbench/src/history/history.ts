/**
 * Undo and redo over several documents, in the one order in which they were changed. `D` names the documents. A step keeps the
 * documents that it changed as they were on its other side; edits share all that they do not change, so whole values cost no more
 * than patches. Knows nothing of what the documents are.
 */
export interface Step<D> {
  /** What was done, as a noun phrase for "Undo …". */
  readonly label: string;
  /** The documents on the other side of the step: those that it changed, and no others. */
  readonly values: Partial<D>;
}

export interface History<D> {
  readonly present: D;
  readonly past: readonly Step<D>[];
  /** The next one to redo first. */
  readonly future: readonly Step<D>[];
  /** Changes of the same open group join one step: the letters of one field, the travel of one slider. */
  readonly openGroup: string | undefined;
}

/** More steps than anybody walks back; the oldest go first. */
const MOST_STEPS_BACK = 200;

export function startHistory<D>(present: D): History<D> {
  return { present, past: [], future: [], openGroup: undefined };
}

/** Takes over `change`; with a `group` equal to the open one, and of documents of the last step, the change joins that step. */
export function record<D extends object>(
  history: History<D>,
  label: string,
  change: Partial<D>,
  group?: string,
): History<D> {
  const changed = documentsIn(change).filter((name) => !Object.is(change[name], history.present[name]));
  if (changed.length === 0) return history;
  const last = history.past.at(-1);
  const joins =
    group !== undefined && group === history.openGroup && last && changed.every((name) => name in last.values);
  const { past, present } = history;
  return {
    present: { ...present, ...change },
    past: joins ? past : [...past, { label, values: valuesOf(present, changed) }].slice(-MOST_STEPS_BACK),
    future: [],
    openGroup: group,
  };
}

/** Documents that come to the others, from the device say: no step brings them or takes them away. */
export function adopt<D>(history: History<D>, documents: Partial<D>): History<D> {
  return { ...history, present: { ...history.present, ...documents } };
}

/** The documents before the first change of an open group; the present ones when the group is not open. */
export function groupStart<D>({ present, past, openGroup }: History<D>, group: string | undefined): D {
  return group !== undefined && openGroup === group ? { ...present, ...past.at(-1)?.values } : present;
}

/** The next change starts a step of its own. */
export function closeGroup<D>(history: History<D>): History<D> {
  return history.openGroup === undefined ? history : { ...history, openGroup: undefined };
}

export function undo<D extends object>(history: History<D>): History<D> {
  const step = history.past.at(-1);
  if (!step) return history;
  return {
    present: { ...history.present, ...step.values },
    past: history.past.slice(0, -1),
    future: [turned(step, history.present), ...history.future],
    openGroup: undefined,
  };
}

export function redo<D extends object>(history: History<D>): History<D> {
  const [step, ...future] = history.future;
  if (!step) return history;
  return {
    present: { ...history.present, ...step.values },
    past: [...history.past, turned(step, history.present)],
    future,
    openGroup: undefined,
  };
}

/** Names of the documents that a step changed. */
export const documentsOf = <D extends object>({ values }: Step<D>): readonly (keyof D)[] => documentsIn(values);

const documentsIn = <D extends object>(documents: Partial<D>) => Object.keys(documents) as (keyof D)[];

const valuesOf = <D>(documents: D, names: readonly (keyof D)[]): Partial<D> =>
  Object.fromEntries(names.map((name) => [name, documents[name]])) as Partial<D>;

/** The same step seen from its other side. */
const turned = <D extends object>(step: Step<D>, present: D): Step<D> => ({
  label: step.label,
  values: valuesOf(present, documentsOf(step)),
});
