/** What is typed into one field of a rig sheet, checked by itself and made into the value that the document keeps. */
import { parseBasis } from "./basis.ts";
import { textIssue } from "./checkTexts.ts";
import { fieldAt } from "./fields.ts";
import { checkLimits } from "./limits.ts";
import { pathSteps } from "./path.ts";
import type { RigIssue } from "./rig.ts";
import { fact } from "./rigFacts.ts";
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
  const name = { brought: field.label };
  if (field.kind === "quantity") {
    const read = parseQuantity(typed, field.dimension);
    const fault = read.ok ? checkLimits(read.value, field, typed) : read;
    if (fault) return { ok: false, issue: { path, got: fault.got, expected: fault.expected, message: fault.message } };
    const si = (read as { value: number }).value;
    const bare = acceptsNumber(field.dimension) && !typed.endsWith("%");
    return { ok: true, value: bare ? si : typed, si };
  }
  if (field.kind === "basis" && !parseBasis(typed)) {
    const expected = fact("expected.basis", {});
    return { ok: false, issue: { path, got: `"${typed}"`, expected, message: fact("basisForm", { expected }) } };
  }
  if (field.kind === "choice" && !field.options.some((option) => option.value === typed)) {
    const list = { list: field.options.map(({ label }) => ({ brought: label })) };
    const expected = fact("expected.oneOf", { list });
    return { ok: false, issue: { path, got: `"${typed}"`, expected, message: fact("oneChoice", { name, expected }) } };
  }
  if (field.kind === "text" && typed.length > field.longest) {
    const expected = fact("expected.atMostCharacters", { count: field.longest });
    const got = fact("got.characters", { count: typed.length });
    return { ok: false, issue: { path, got, expected, message: fact("tooLong", { name, expected }) } };
  }
  const hidden = textIssue(typed, pathSteps(path));
  return hidden ? { ok: false, issue: hidden } : { ok: true, value: typed };
}
