import type { Plot } from "@secondline/figures";
import type { BreakTest, GroupReport } from "@secondline/strength";
import { capital } from "@secondline/words";
import { groupTitle } from "@secondline/words/breakLog";
import { tellNote } from "@secondline/words/notes";
import { sayBreakLog } from "@secondline/words/page/breakLog";
import { FIT_HEADS, fitNotes, fitRows, fitsTitle, gainWords, groupNumbers } from "@secondline/workbench/record";
import { Disclosure } from "../design/Disclosure.tsx";
import { Paragraphs } from "../design/Lines.tsx";
import { Table } from "../design/Table.tsx";
import { useOwnStocks } from "../stocks/useOwnStocks.ts";
import { DotPlot } from "./DotPlot.tsx";
import { Flags } from "./Flags.tsx";
import { PlotFigure } from "./PlotFigure.tsx";
import { TestTable } from "./TestTable.tsx";
import styles from "./wear.module.css";

interface Props {
  name: string;
  tests: readonly BreakTest[];
  report: GroupReport | undefined;
  /** On probability paper; undefined while it is computed, and for a single test. */
  fit: Plot | undefined;
  most: number;
  wide: boolean;
}

/** One group of tests: first the tests themselves, then what speaks against the numbers, then the numbers. */
export function GroupPart({ name, tests, report, fit, most, wide }: Props) {
  const own = useOwnStocks();
  const title = tests[0] ? groupTitle(tests[0], own) : name;
  return (
    <section className={styles.group} aria-label={title}>
      <h3 className={styles.h3}>{capital(title)}</h3>
      <DotPlot {...{ tests, most, report, wide }} />
      {report ? (
        <>
          {report.doubts.length > 0 && (
            <Flags
              label={sayBreakLog("groupPart.doubts")}
              of={report.doubts.map(({ message }) => ({ key: message.code, said: tellNote(message) }))}
            />
          )}
          <Numbers report={report} />
          <More report={report} fit={fit} />
        </>
      ) : (
        <p className={styles.soft}>{sayBreakLog("groupPart.computing")}</p>
      )}
      <TestTable tests={tests} />
    </section>
  );
}

function Numbers({ report }: { report: GroupReport }) {
  return (
    <dl className={styles.numbers}>
      {groupNumbers(report).map(({ label, value, note, strong }) => (
        <div key={label} className={strong ? styles.strong : ""}>
          <dt>{label}</dt>
          <dd>
            <span className={styles.value}>{value}</span> <span className={styles.soft}>{note}</span>
          </dd>
        </div>
      ))}
    </dl>
  );
}

function More({ report, fit }: Pick<Props, "fit"> & { report: GroupReport }) {
  return (
    <Disclosure level={4} title={fitsTitle(report.narrowing)}>
      {fit && <PlotFigure plot={fit} />}
      {report.families.length > 0 && <Fits report={report} />}
      <Paragraphs of={[...fitNotes(report), gainWords(report.narrowing)]} className={styles.note} />
    </Disclosure>
  );
}

function Fits({ report }: { report: GroupReport }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table that scrolls sideways must be reachable by keyboard
    <section className={styles.tableWrap} aria-label={sayBreakLog("groupPart.fittedDistributions")} tabIndex={0}>
      <Table heads={FIT_HEADS} rows={fitRows(report)} isNamed className={styles.table} />
      <p className={styles.note}>{sayBreakLog("groupPart.aiccNote")}</p>
    </section>
  );
}
