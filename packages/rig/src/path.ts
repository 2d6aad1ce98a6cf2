/** Paths into a document as messages and fields name them: `main.sections[1].length`, `ground[3][0]`. */

export type PathStep = string | number;

const PATH_STEP = /^(?:\.?([^.[\]]+)|\[(\d+)\])/;

/** The steps of a path; throws on a malformed one, which is a programmer's error. */
export function pathSteps(path: string): PathStep[] {
  const steps: PathStep[] = [];
  let rest = path;
  while (rest !== "") {
    const match = PATH_STEP.exec(rest);
    if (!match) throw new Error(`Not a path into a rig document: ${path}`);
    steps.push(match[1] ?? Number(match[2]));
    rest = rest.slice(match[0].length);
  }
  return steps;
}

/** Steps written as a path. */
export function pathText(steps: readonly PropertyKey[]): string {
  return steps.reduce<string>((text, step) => {
    if (typeof step === "number") return `${text}[${step}]`;
    return text === "" ? String(step) : `${text}.${String(step)}`;
  }, "");
}

/** Whether a value of a document is one with named parts: no list, no text, no number. */
export const isGroup = (value: unknown): value is Readonly<Record<PathStep, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** What stands at a path, or undefined. Only own keys are looked at. */
export function valueAt(document: unknown, path: string | readonly PropertyKey[]): unknown {
  const steps = typeof path === "string" ? pathSteps(path) : path;
  let here: unknown = document;
  for (const step of steps) {
    if (typeof here !== "object" || here === null || !Object.hasOwn(here, step)) return undefined;
    here = (here as Record<PropertyKey, unknown>)[step];
  }
  return here;
}

/**
 * A copy of the document with one value changed; what is not on the way is shared with the original. `undefined` takes
 * the value out (from a list: the item, so that the later ones move up). Groups on the way that are missing are made.
 * The value is not checked: `readRig` does that.
 */
export function editDocument<D>(document: D, path: string, value: unknown): D {
  return edit(document, pathSteps(path), value, path) as D;
}

function edit(here: unknown, steps: readonly PathStep[], value: unknown, path: string): unknown {
  const [step, ...rest] = steps;
  if (step === undefined) return value;
  if (step === "__proto__") throw new Error(`Not a path into a rig document: ${path}`);
  if (typeof step === "number") {
    const list = here === undefined ? [] : here;
    if (!Array.isArray(list)) throw new Error(`${path}: there is no list at [${step}]`);
    if (step > list.length) throw new Error(`${path}: the list has ${list.length} items`);
    const next = edit(list[step], rest, value, path);
    return next === undefined ? list.toSpliced(step, 1) : [...list.slice(0, step), next, ...list.slice(step + 1)];
  }
  if (here !== undefined && (typeof here !== "object" || here === null || Array.isArray(here))) {
    throw new Error(`${path}: there is no group that could hold "${step}"`);
  }
  const group: Record<string, unknown> = { ...(here as object | undefined) };
  const next = edit(group[step], rest, value, path);
  if (next === undefined) delete group[step];
  else group[step] = next;
  return group;
}
