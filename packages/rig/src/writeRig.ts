/** The canonical text of a rig document: fields in the order of the format, every value as typed. */
import type { RigDocument } from "./document.ts";
import { RIG_TAG } from "./document.ts";
import { FIELDS } from "./fields.ts";

/** A group stays on one line up to this width [letters]. */
const LINE_WIDTH = 120;
const FIELD_ORDER = [RIG_TAG, ...Object.keys(FIELDS)];

/** Text of a rig file, ending in a new line. Reading it gives the same document back. */
export function writeRig(document: RigDocument): string {
  return `${print(document, "", 0, 0)}\n`;
}

/** Keys of a group in the order of the field table; what the table does not know comes last, as it was. */
function orderedKeys(group: object, pattern: string): string[] {
  const rank = (key: string) => {
    const path = pattern === "" ? key : `${pattern}.${key}`;
    const at = FIELD_ORDER.findIndex(
      (known) => known === path || known.startsWith(`${path}.`) || known.startsWith(`${path}[`),
    );
    return at < 0 ? FIELD_ORDER.length : at;
  };
  return Object.keys(group)
    .map((key) => [key, rank(key)] as const)
    .sort((a, b) => a[1] - b[1])
    .map(([key]) => key);
}

/** `used` is what stands before the value on its line. */
function print(value: unknown, pattern: string, depth: number, used: number): string {
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  const inside = "  ".repeat(depth + 1);
  const parts = Array.isArray(value)
    ? value.map((item) => ({ name: "", text: (start: number) => print(item, `${pattern}[]`, depth + 1, start) }))
    : orderedKeys(value, pattern)
        .filter((key) => (value as Record<string, unknown>)[key] !== undefined)
        .map((key) => {
          const name = `${JSON.stringify(key)}: `;
          const path = pattern === "" ? key : `${pattern}.${key}`;
          const item = (value as Record<string, unknown>)[key];
          return { name, text: (start: number) => print(item, path, depth + 1, start + name.length) };
        });
  const [open, close] = Array.isArray(value) ? ["[", "]"] : ["{", "}"];
  if (parts.length === 0) return open + close;
  if (depth > 0 && !breaks(value)) {
    const pad = Array.isArray(value) ? "" : " ";
    const line = open + pad + parts.map((part) => part.name + part.text(0)).join(", ") + pad + close;
    if (!line.includes("\n") && used + line.length < LINE_WIDTH) return line;
  }
  const lines = parts.map((part) => inside + part.name + part.text(inside.length));
  return `${open}\n${lines.join(",\n")}\n${"  ".repeat(depth)}${close}`;
}

/** Groups that hold groups are spread out; everything else stays on one line when it fits. */
function breaks(value: object): boolean {
  const nested = Object.values(value).filter((item) => typeof item === "object" && item !== null);
  return !Array.isArray(value) && nested.some((item) => !Array.isArray(item) || breaks(item));
}
