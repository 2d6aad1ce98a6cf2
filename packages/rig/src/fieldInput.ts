/** What is typed into one field of a rig sheet, checked by itself and made into the value that the document keeps. */
import { parseBasis } from "./basis.ts";
import { textIssue } from "./checkTexts.ts";
import { fieldAt } from "./fields.ts";
import { checkLimits } from "./limits.ts";
import { pathSteps } from "./path.ts";
import type { RigIssue } from "./rig.ts";
import { acceptsNumber, parseQuantity } from "./units.ts";

export type FieldReading =
  | {
      readonly ok: true;
      /** For `editDocument`: the text as typed, or a number where the format wants a bare one. */
      readonly value: string | number;
      /** SI value of a quantity. */
      readonly si?: number;
    }
  | { readonly ok: false; readonly issue: RigIssue };

/** Reads the text typed into the field at a path. Throws when the path is none of a field, a programmer's error. */
export function readField(path: string, text: string): FieldReading {
  const field = fieldAt(path);
  if (!field) throw new Error(`There is no field at ${path}`);
  const typed = text.trim();
  if (field.kind === "quantity") {
    const read = parseQuantity(typed, field.dimension);
    const fault = read.ok ? checkLimits(read.value, field, typed) : read;
    if (fault) return { ok: false, issue: { path, got: fault.got, expected: fault.expected, message: fault.message } };
    const si = (read as { value: number }).value;
    const bare = acceptsNumber(field.dimension) && !typed.endsWith("%");
    return { ok: true, value: bare ? si : typed, si };
  }
  if (field.kind === "basis" && !parseBasis(typed)) {
    const expected = 'a kind, a colon and the source, such as "published: EN 959:2018"';
    return { ok: false, issue: { path, got: `"${typed}"`, expected, message: `A basis is written as ${expected}.` } };
  }
  if (field.kind === "choice" && !field.options.some((option) => option.value === typed)) {
    const expected = `one of ${field.options.map((option) => option.label).join(", ")}`;
    return { ok: false, issue: { path, got: `"${typed}"`, expected, message: `${field.label} is ${expected}.` } };
  }
  if (field.kind === "text" && typed.length > field.longest) {
    const expected = `at most ${field.longest} characters`;
    return {
      ok: false,
      issue: { path, got: `${typed.length} characters`, expected, message: `${field.label}: ${expected}.` },
    };
  }
  const hidden = textIssue(typed, pathSteps(path));
  return hidden ? { ok: false, issue: hidden } : { ok: true, value: typed };
}
