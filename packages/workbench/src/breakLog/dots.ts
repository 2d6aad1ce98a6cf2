/** The tests of a group as they are drawn one by one, and what such a drawing says to those who do not see it. */

import type { BreakTest, GroupReport } from "@secondline/strength";
import { listed, quantity } from "@secondline/words";
import { dayText } from "@secondline/words/dates";
import { formatForce } from "@secondline/words/formats";
import { sayBreakLog } from "@secondline/words/page/breakLog";
import { failureWords, groupsBy, isOutlier, loadOf, resultWords } from "./testGroups.ts";

interface Dot {
  readonly result: BreakTest["result"];
  /** [N] */
  readonly load: number;
  readonly title: string;
  readonly odd: boolean;
}

/** Tests that failed in one way. */
export interface Dots {
  readonly name: string;
  readonly dots: readonly Dot[];
}

export const dotsOf = (tests: readonly BreakTest[], report: GroupReport | undefined): readonly Dots[] =>
  groupsBy(tests, failureWords).map(({ name, tests: own }) => ({
    name,
    dots: own.map((test) => ({
      result: test.result,
      load: loadOf(test),
      title: titleOf(test),
      odd: isOutlier(test, report),
    })),
  }));

function titleOf(test: BreakTest): string {
  const batch = test.batch ? sayBreakLog("dotPlot.batch", { batch: test.batch }) : "";
  const date = test.date ? `, ${dayText(test.date)}` : "";
  const note = test.note ? `. ${test.note}` : "";
  return `${resultWords(test, formatForce)}${batch}${date}${note}`;
}

/** How many tests there are, between which loads, and how many failed in which way. */
export function dotsTold(modes: readonly Dots[]): string {
  const loads = modes.flatMap(({ dots }) => dots.map(({ load }) => load));
  const [from, to] = [quantity.strength(Math.min(...loads)), quantity.strength(Math.max(...loads))];
  return sayBreakLog("dotPlot.testsWayFailing", {
    exact: loads.length,
    span: sayBreakLog("dotPlot.between", { from, to }),
    list: listed(
      modes.map(({ name, dots }) => `${name}: ${dots.length}`),
      "semicolon",
    ),
  });
}
