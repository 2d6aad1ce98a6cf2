/** A test as a mark in a plot, and as columns of its table. */
import type { BreakTest } from "@secondline/strength";
import type { Mark, PlotPoint, PlotRow } from "../plot/plot.ts";

/** `place`: the place of a load on the axis. */
export function testMark({ result }: BreakTest, place: (load: number) => PlotPoint): Mark {
  switch (result.kind) {
    case "exact":
      return { kind: "broke", at: place(result.value) };
    case "above":
      return { kind: "atLeast", at: place(result.value) };
    case "below":
      return { kind: "below", at: place(result.value) };
    case "between":
      return { kind: "between", at: place(result.from), to: place(result.to) };
  }
}

/** Loads in kilonewtons, to a newton. */
export const kN = (newton: number): number => Number((newton / 1000).toFixed(3));

/** To six digits: more of them are noise of the arithmetic. */
export const digits = (value: number): number => Number(value.toPrecision(6));

export function testRow(test: BreakTest, more: Omit<PlotRow, "series">): PlotRow {
  const { result, batch, date, line } = test;
  const load =
    result.kind === "between"
      ? { low_kN: kN(result.from), high_kN: kN(result.to) }
      : result.kind === "exact"
        ? { strength_kN: kN(result.value) }
        : result.kind === "above"
          ? { low_kN: kN(result.value) }
          : { high_kN: kN(result.value) };
  return { series: "test", outcome: test.outcome, ...load, ...more, batch, date, log_line: line };
}
