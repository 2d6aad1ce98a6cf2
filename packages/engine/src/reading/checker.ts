/** Checks values as they come from JSON, each with its path, and keeps every fault. */
import type { ProblemIssue } from "../record/recording.ts";

type Fields = Readonly<Record<string, unknown>>;
/** Checks a value at a path. */
export type CheckRule = (check: Checker, path: string, value: unknown) => void;

/** Collects faults. */
export class Checker {
  readonly issues: ProblemIssue[];
  constructor(issues: ProblemIssue[]) {
    this.issues = issues;
  }
  fault(path: string, got: unknown, expected: string): void {
    this.issues.push({ path: path === "" ? "(file)" : path, got: show(got), expected });
  }

  /** An object with these keys; a key ending in "?" may be missing. Returns it, or undefined. */
  object(path: string, value: unknown, rules: Readonly<Record<string, CheckRule>>): void {
    if (typeof value !== "object" || value === null || Array.isArray(value)) {
      this.fault(path, value, "an object");
      return;
    }
    const fields = value as Fields;
    const known = Object.keys(rules).map((key) => key.replace(/\?$/, ""));
    for (const key of Object.keys(fields)) {
      if (!known.includes(key))
        this.fault(join(path, key), fields[key], `no such key here; known are ${known.join(", ")}`);
    }
    for (const [marked, rule] of Object.entries(rules)) {
      const key = marked.replace(/\?$/, "");
      if (fields[key] === undefined) {
        if (marked === key) this.fault(join(path, key), undefined, "a value; it is missing");
      } else rule(this, join(path, key), fields[key]);
    }
  }

  list(path: string, value: unknown, rule: CheckRule, least = 0, most = 1000): void {
    if (!Array.isArray(value) || value.length < least || value.length > most) {
      this.fault(path, value, `a list of ${least} to ${most} entries`);
      return;
    }
    for (const [k, entry] of value.entries()) rule(this, `${path}[${k}]`, entry);
  }
}

const join = (path: string, key: string): string => (path === "" ? key : `${path}.${key}`);

function show(value: unknown): string {
  if (value === undefined) return "nothing";
  if (typeof value === "number") return String(value);
  const text = JSON.stringify(value) ?? String(value);
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}

/** A finite number within bounds; `above` excludes its bound. */
export function number(what: string, bounds: { above?: number; from?: number; to?: number } = {}): CheckRule {
  return (check, path, value) => {
    const ok =
      typeof value === "number" &&
      Number.isFinite(value) &&
      value > (bounds.above ?? Number.NEGATIVE_INFINITY) &&
      value >= (bounds.from ?? Number.NEGATIVE_INFINITY) &&
      value <= (bounds.to ?? Number.POSITIVE_INFINITY);
    if (!ok) check.fault(path, value, what);
  };
}
export const text: CheckRule = (check, path, value) => {
  if (typeof value !== "string" || value === "") check.fault(path, value, "a text");
};
export const oneOf =
  (...choices: string[]): CheckRule =>
  (check, path, value) => {
    if (!choices.includes(value as string))
      check.fault(path, value, choices.map((choice) => `"${choice}"`).join(" or "));
  };
