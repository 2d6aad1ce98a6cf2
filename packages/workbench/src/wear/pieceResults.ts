/** Results that are typed beside the pieces, as rows of the break log. */

import {
  type BreakTest,
  type LogFact,
  type LogFault,
  type Piece,
  pieceRow,
  readTest,
  type Teardown,
} from "@secondline/strength";
import { tellLogFault } from "@secondline/words/logFaults";
import { sayTeardown } from "@secondline/words/page/teardown";

/** What is typed beside a piece. */
export interface Typed {
  readonly outcome: string;
  readonly result: string;
  readonly result_to: string;
  readonly failure_place: string;
}

export const NOTHING_TYPED: Typed = { outcome: "broke", result: "", result_to: "", failure_place: "" };

export type TypedReading =
  | { readonly ok: true; readonly test: BreakTest }
  | { readonly ok: false; readonly faults: readonly TypedFault[] };

/** A fault with its sentence. */
export type TypedFault = Pick<LogFault, "column"> & { readonly message: string };

/** A decimal comma is taken, as in a log that is parted by semicolons. */
const pointed = (text: string): string => text.trim().replace(/^(\d+),(\d+)$/, "$1.$2");

export function readTyped(plan: Pick<Teardown, "on" | "invented">, piece: Piece, typed: Typed): TypedReading {
  const between = typed.outcome === "broke between";
  const row = {
    ...pieceRow(piece, plan.on),
    outcome: typed.outcome,
    result: pointed(typed.result),
    result_to: between ? pointed(typed.result_to) : "",
    failure_place: typed.failure_place.trim(),
  };
  const reading = readTest(row, 0);
  if (!reading.ok) return { ok: false, faults: reading.faults.map(inForm) };
  return { ok: true, test: plan.invented ? { ...reading.value, invented: true } : reading.value };
}

const inForm = ({ column, message }: LogFault): TypedFault => ({ column, message: sentenceInForm(message) });

/** A fault names columns of the file; beside a piece the unit stands in the label. */
function sentenceInForm(message: LogFact): string {
  switch (message.code) {
    case "cell.noNumber":
      return sayTeardown("results.noNumber", message.values);
    case "cell.noLoad":
      return sayTeardown(message.values.column === "result" ? "results.loadMissing" : "results.upperLoadMissing");
    case "cell.decimalComma":
      return sayTeardown("results.decimalComma", message.values);
    case "cell.upperLoadSmaller":
      return sayTeardown("results.order");
    default:
      return tellLogFault(message);
  }
}

const PIECE = /^piece P\d+$/;

/** Whether a test is a result of the teardown of that day: the plan rests on what was known before. */
export const isResult = (test: BreakTest, on: string): boolean => test.date === on && PIECE.test(test.note ?? "");

/** The result of a piece that is in the log already. */
export function pieceResultOf(
  tests: readonly BreakTest[],
  plan: Pick<Teardown, "on">,
  piece: Piece,
): BreakTest | undefined {
  const { taken_from, material, note } = pieceRow(piece, plan.on);
  return tests.find(
    (test) =>
      isResult(test, plan.on) && test.note === note && test.takenFrom === taken_from && test.material === material,
  );
}
