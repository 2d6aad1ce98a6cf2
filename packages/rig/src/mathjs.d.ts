/** The one factory of mathjs that is used here; its own type file leaves it out. */
import "mathjs";

declare module "mathjs" {
  interface ParsedUnit {
    /** Value in SI units. */
    readonly value: number;
    /** Powers of mass, length, time, current, temperature, light, amount, angle and bits. */
    readonly dimensions: readonly number[];
  }
  interface UnitClass {
    /** Reads "5 kN" by mathjs's own unit reader, which is not its expression evaluator; throws on anything else. */
    parse(text: string): ParsedUnit;
  }
  // biome-ignore lint/suspicious/noExplicitAny: the factory takes arithmetic for any number type
  export function createUnitClass(parts: Record<string, any>): UnitClass;
}
