/** Which break tests say something about a rig's webbings and ropes. */
import type { Fact, Rig } from "@secondline/rig";
import { countingTests, type TestsUntil, testUseWords } from "@secondline/strength";
import { assessmentNote } from "./assessmentNotes.ts";

export interface TestsTaken {
  readonly count: number;
  readonly notes: readonly Fact[];
}

/** `on`: the day by which the tests that count were pulled. */
export function testsTaken(
  { main, backup, leash }: Rig,
  { counted: tests, later }: TestsUntil,
  on: string | undefined,
): TestsTaken {
  const left = later.length === 0 ? [] : [laterNote(later.length, on!)];
  if (tests.length === 0) return { count: 0, notes: left };
  const all = [...main.sections, ...(backup?.sections ?? [])].map(({ stock }) => stock);
  const stocks = [...new Map([...all, leash.stock].map((stock) => [stock.id, stock])).values()];
  return { count: countingTests(stocks, tests), notes: [...testUseWords(stocks, tests), ...left] };
}

const laterNote = (count: number, on: string): Fact => assessmentNote("tests.later", { count, day: { day: on } });
