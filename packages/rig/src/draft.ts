/**
 * A document that may be faulty, read field by field: what can be read is in SI units, what cannot is undefined. The
 * checks of how fields go together work on this, so that one bad field hides no other fault.
 */
import type { Curve } from "./curve.ts";
import type { FactValue } from "./fact.ts";
import { fieldAt } from "./fields.ts";
import { checkLimits } from "./limits.ts";
import { valueAt } from "./path.ts";
import type { RigIssue } from "./rig.ts";
import type { RigFact } from "./rigFacts.ts";
import { describeValue, parseQuantity } from "./units.ts";

export class Draft {
  readonly document: unknown;
  readonly issues: RigIssue[] = [];

  constructor(document: unknown) {
    this.document = document;
  }

  has(path: string): boolean {
    return valueAt(this.document, path) !== undefined;
  }

  /** A quantity in SI units, its stated default when it is left out, undefined when it is unreadable. */
  number(path: string): number | undefined {
    const field = fieldAt(path);
    if (field?.kind !== "quantity") throw new Error(`${path} is not a quantity of the field table`);
    const value = valueAt(this.document, path) ?? field.fallback;
    const read = parseQuantity(value, field.dimension);
    return read.ok && !checkLimits(read.value, field, value) ? read.value : undefined;
  }

  text(path: string): string | undefined {
    const value = valueAt(this.document, path);
    return typeof value === "string" ? value : undefined;
  }

  /** Paths of the items of a list; none when it is not there. */
  items(path: string): string[] {
    const value = valueAt(this.document, path);
    return Array.isArray(value) ? value.map((_, i) => `${path}[${i}]`) : [];
  }

  /** Pairs of a list in SI units; undefined when any is unreadable. */
  pairs(path: string): Curve | undefined {
    const pairs = this.items(path).map((item) => [this.number(`${item}[0]`), this.number(`${item}[1]`)] as const);
    return pairs.every(([a, b]) => a !== undefined && b !== undefined) ? (pairs as unknown as Curve) : undefined;
  }

  /** Notes a fault at a path. */
  fault(path: string, expected: FactValue, message: RigFact): void {
    const value = valueAt(this.document, path);
    this.issues.push({ path, got: describeValue(value), expected, message });
  }
}
