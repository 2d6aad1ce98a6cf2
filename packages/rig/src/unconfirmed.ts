/**
 * Values that were taken over from a template and that nobody has confirmed: the document lists their paths. A mark is on a field,
 * or on the ground profile as a whole. It goes where its value goes, and away when that value is changed.
 */
import type { Draft } from "./draft.ts";
import { fieldAt } from "./fields.ts";
import { editDocument, isGroup, type PathStep, pathSteps, pathText, valueAt } from "./path.ts";
import { fact } from "./rigFacts.ts";
import { describeValue } from "./units.ts";

const UNCONFIRMED_FIELD = "unconfirmed";
/** A profile is confirmed as one: nobody confirms half a valley. */
const GROUND_FIELD = "ground";

type Marks = readonly (readonly PathStep[])[];

/** Paths that a document marks, as written; what is no list of texts marks nothing. */
export function marksIn(document: unknown): readonly string[] {
  const list = valueAt(document, UNCONFIRMED_FIELD);
  return Array.isArray(list) ? list.filter((path): path is string => typeof path === "string") : [];
}

function stepsOf(path: string): readonly PathStep[] | undefined {
  try {
    return pathSteps(path);
  } catch {
    return undefined;
  }
}

const namesValue = (path: string): boolean =>
  path === GROUND_FIELD ||
  (stepsOf(path) !== undefined && fieldAt(path) !== undefined && !path.startsWith(UNCONFIRMED_FIELD));

/** Marks of values that the rig has; undefined when there is none. One on a part that is not there says nothing. */
export function unconfirmedIn(document: unknown): readonly string[] | undefined {
  const marks = marksIn(document).filter((path) => {
    const steps = stepsOf(path);
    return steps !== undefined && valueAt(document, steps.slice(0, -1)) !== undefined;
  });
  return marks.length === 0 ? undefined : marks;
}

export function checkUnconfirmed(draft: Draft): void {
  const paths = marksIn(draft.document);
  draft.items(UNCONFIRMED_FIELD).forEach((at, i) => {
    const path = draft.text(at);
    if (path === undefined || path === "") return;
    if (!namesValue(path)) {
      draft.fault(at, fact("expected.path", {}), fact("unconfirmed.noValue", { path: describeValue(path) }));
    } else if (paths.indexOf(path) < i)
      draft.fault(at, fact("expected.pathOnce", {}), fact("unconfirmed.twice", { path }));
  });
}

/** A copy of the document in which the values at these paths are confirmed. */
export function confirm<D>(document: D, paths: readonly string[]): D {
  const left = marksIn(document).filter((path) => !paths.includes(path));
  if (left.length === marksIn(document).length) return document;
  return editDocument(document, UNCONFIRMED_FIELD, left.length === 0 ? undefined : left);
}

/**
 * As `editDocument`, for a value that somebody chose: it is confirmed by that, and what else is marked keeps its mark wherever it
 * comes to lie. A point of the ground does not confirm the others. Copies of a value that nobody confirmed are not confirmed either.
 */
export function editRig<D>(document: D, path: string, value: unknown): D {
  const edited = editDocument(document, path, value);
  if (path === UNCONFIRMED_FIELD || path.startsWith(`${UNCONFIRMED_FIELD}[`)) return edited;
  const around = marksIn(document).filter((mark) => path.startsWith(`${mark}[`) || path.startsWith(`${mark}.`));
  const others = marksIn(document).filter((mark) => mark !== path && !around.includes(mark));
  const moved = carried(
    document,
    edited,
    others.flatMap((mark) => [stepsOf(mark) ?? []]),
  ).map(pathText);
  const marks = [...new Set([...around, ...moved])];
  if (marks.length === 0 && marksIn(document).length === 0) return edited;
  return editDocument(edited, UNCONFIRMED_FIELD, marks.length === 0 ? undefined : marks);
}

const same = (a: unknown, b: unknown): boolean => Object.is(a, b) || JSON.stringify(a) === JSON.stringify(b);

/** Where marks on `before` lie on `after`; paths count from there. */
function carried(before: unknown, after: unknown, marks: Marks): Marks {
  if (marks.length === 0 || Object.is(before, after)) return marks;
  const here = same(before, after) ? marks.filter((mark) => mark.length === 0) : [];
  const deeper = marks.filter((mark) => mark.length > 0);
  if (deeper.length === 0) return here;
  if (Array.isArray(before) && Array.isArray(after)) return [...here, ...carriedInList(before, after, deeper)];
  if (!isGroup(before) || !isGroup(after)) return here;
  const keys = new Set(deeper.map((mark) => mark[0]!));
  const inside = [...keys].flatMap((key) =>
    carried(before[key], after[key], below(deeper, key)).map((mark) => [key, ...mark]),
  );
  return [...here, ...inside];
}

/** An item is known again as the same object; a new one takes over the marks of the values that it copies. */
function carriedInList(before: readonly unknown[], after: readonly unknown[], marks: Marks): Marks {
  return after.flatMap((item, j) => {
    const was = before.indexOf(item);
    const inside =
      was >= 0
        ? below(marks, was)
        : before.flatMap((old, i) => below(marks, i).filter((mark) => same(valueAt(old, mark), valueAt(item, mark))));
    return inside.map((mark) => [j, ...mark]);
  });
}

const below = (marks: Marks, step: PathStep): Marks =>
  marks.filter((mark) => mark[0] === step).map((mark) => mark.slice(1));
