import { resultMark } from "@secondline/figures/breakLog";
import { issuesListed } from "@secondline/rig";
import { type BreakTest, groupKey, type LogFault } from "@secondline/strength";
import { englishBreakLogWords as breakLogWords } from "@secondline/words/breakLog";
import { tellLogFault } from "@secondline/words/logFaults";
import { moreText } from "@secondline/words/more";
import { sayBreakLog } from "@secondline/words/page/breakLog";
import { groupsBy, loadOf } from "@secondline/workbench";
import { useState } from "react";
import { Disclosure } from "../design/Disclosure.tsx";
import { Shapes } from "../picture/Shapes.tsx";
import { useOwnStocks } from "../stocks/useOwnStocks.ts";
import { useAnalysis } from "../wearInHand/useAnalysis.ts";
import { useWear } from "../wearInHand/useWear.ts";
import { GroupPart } from "./GroupPart.tsx";
import { PlotFigure } from "./PlotFigure.tsx";
import { SavePlots } from "./SavePlots.tsx";
import { TestForm } from "./TestForm.tsx";
import styles from "./wear.module.css";

/** Results from the test machine, and what they say about the next part of the same kind. */
export function BreakLogPage({ wide }: { wide: boolean }) {
  const log = useWear((state) => state.work.log);
  const { job, latest } = useAnalysis(
    log.tests,
    log.tests.length > 0 ? (analysis) => analysis.breakLog(log.tests) : undefined,
  );
  const { report, plots = [] } = latest ?? {};
  const own = useOwnStocks();
  const groups = groupsBy(log.tests, groupKey);
  const next = report?.testNext;
  const nextKey = report?.groups.find(({ label }) => label === next?.label)?.key;
  const ofNext = groups.find(({ name }) => name === nextKey)?.tests[0];
  const most =
    1.05 * Math.max(1000, ...log.tests.map((test) => (test.result.kind === "between" ? test.result.to : loadOf(test))));
  const [adding, setAdding] = useState(false);
  return (
    <div className={styles.log}>
      <header className={styles.logHead}>
        <h2 className={styles.h2}>{log.name}</h2>
        {log.invented && <p className={styles.warn}>{sayBreakLog("breakLogPage.inventedDemonstrationNothing")}</p>}
        <p className={styles.serif}>
          {log.tests.length === 0
            ? sayBreakLog("breakLogPage.noTestsYet")
            : sayBreakLog("breakLogPage.testsGroupsPart", { tests: log.tests.length, groups: groups.length })}
        </p>
        {next && <p className={styles.note}>{breakLogWords.testNext(next, ofNext, own)}</p>}
        {job.kind === "failed" && (
          <p className={styles.wrong}>{sayBreakLog("breakLogPage.statisticsCouldNot", { message: job.message })}</p>
        )}
        <Key />
        <SavePlots plots={plots} of={sayBreakLog("breakLogPage.allPlots")} />
        <Disclosure title={sayBreakLog("breakLogPage.addTest")} open={adding} onOpenChange={setAdding}>
          <TestForm />
        </Disclosure>
      </header>
      <div className={styles.groups}>
        {groups.map(({ name, tests }) => (
          <GroupPart
            key={name}
            {...{ name, tests, most, wide }}
            report={report?.groups.find((group) => group.key === name && isOf(group.tests, tests))}
            fit={plots.find(({ figure, of }) => figure === "fit" && of === name)}
          />
        ))}
        {plots
          .filter(({ figure }) => figure !== "fit")
          .map((plot) => (
            <section key={plot.title} className={styles.group} aria-label={plot.title}>
              <h3 className={styles.h3}>{plot.title}</h3>
              <PlotFigure plot={plot} />
            </section>
          ))}
      </div>
    </div>
  );
}

/** A report that came from these very tests; one of a moment ago says nothing about a changed test. */
const isOf = (reported: readonly BreakTest[], tests: readonly BreakTest[]): boolean =>
  JSON.stringify(reported) === JSON.stringify(tests);

/** Widths of the marks, their two ends, and what they say. */
const KEY = [
  { kind: "exact", width: 16, ends: [8, 8], words: sayBreakLog("breakLogPage.brokeHere") },
  { kind: "above", width: 30, ends: [8, 8], words: sayBreakLog("breakLogPage.holdsLeast") },
  { kind: "between", width: 26, ends: [3, 21], words: sayBreakLog("breakLogPage.somewhereBetween") },
] as const;

function Key() {
  return (
    <p className={styles.key}>
      {KEY.map(({ kind, width, ends, words }) => (
        <span key={kind}>
          <svg width={width} height="14" aria-hidden="true">
            <Shapes of={resultMark(kind, ends, 7, 14)} />
          </svg>{" "}
          {words}
        </span>
      ))}
    </p>
  );
}

/** Every bad row of a file by itself; no row of the file was taken. */
export function LogFaults({
  name,
  faults,
  onClose,
}: {
  name: string;
  faults: readonly LogFault[];
  onClose: () => void;
}) {
  const { issues, more } = issuesListed(faults);
  return (
    <section className={styles.faults} role="alert" aria-label={sayBreakLog("breakLogPage.faultsFile")}>
      <p className={styles.serif}>{sayBreakLog("breakLogPage.notImportedThings", { name, count: faults.length })}</p>
      <ul>
        {issues.map((fault) => (
          <li key={`${fault.line} ${fault.column} ${fault.message.code}`}>
            <strong>{sayBreakLog("breakLogPage.line", { line: fault.line, column: fault.column })}</strong>{" "}
            {tellLogFault(fault.message)}{" "}
            <span className={styles.soft}>
              {sayBreakLog("breakLogPage.gotExpected", {
                got: tellLogFault(fault.got),
                expected: tellLogFault(fault.expected),
              })}
            </span>
          </li>
        ))}
        {more !== undefined && <li>{moreText(more)}</li>}
      </ul>
      <button type="button" className={styles.textButton} onClick={onClose}>
        {sayBreakLog("breakLogPage.closeList")}
      </button>
    </section>
  );
}
