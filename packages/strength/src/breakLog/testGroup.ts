/** Which tests belong together, however their names are capitalised and spaced: "New" and "new " are the same state. */
import type { BreakTest } from "./logEntry.ts";

/** Equal for names that differ only in capitals and spaces. */
export const nameKey = (name: string): string => name.trim().replace(/\s+/g, " ").toLowerCase();

/** Equal for tests that are analysed together: of the same part, material, state and wetness. */
export const groupKey = ({ part, material, state, wet }: BreakTest): string =>
  [...[part, material, state].map(nameKey), wet ? "wet" : "dry"].join(", ");

/** Equal for tests of one batch; empty where none is named. */
export const batchKey = ({ batch = "" }: BreakTest): string => nameKey(batch);
