import type { Plot } from "@secondline/figures";
import { formatPercent } from "@secondline/rig";
import type { BreakTest, GroupReport, Narrowing } from "@secondline/strength";
import { Disclosure } from "../design/Disclosure.tsx";
import { quantity } from "../words.ts";
import { DotPlot } from "./DotPlot.tsx";
import { PlotFigure } from "./PlotFigure.tsx";
import { TestTable } from "./TestTable.tsx";
import styles from "./wear.module.css";
import { capital } from "./wearWords.ts";

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
  return (
    <section className={styles.group} aria-label={name}>
      <h3 className={styles.h3}>{capital(name)}</h3>
      <DotPlot {...{ tests, most, report, wide }} />
      {report ? (
        <>
          {report.doubts.length > 0 && (
            <ul className={styles.flags} aria-label="Doubts">
              {report.doubts.map(({ message }) => (
                <li key={message}>
                  <span aria-hidden="true" className={styles.flagMark}>
                    ▲
                  </span>
                  <span>{message}</span>
                </li>
              ))}
            </ul>
          )}
          <Numbers report={report} />
          <More report={report} fit={fit} />
        </>
      ) : (
        <p className={styles.soft}>Computing…</p>
      )}
      <TestTable tests={tests} />
    </section>
  );
}

function Numbers({ report }: { report: GroupReport }) {
  const { tests, sample, mean, deviation, characteristic, en1990 } = report;
  const bounds = sample.filter(({ kind }) => kind !== "exact").length;
  return (
    <dl className={styles.numbers}>
      <Row
        label="95 % of such parts hold, 75 % sure"
        value={quantity.strength(characteristic.at75.value)}
        note={characteristic.at75.method}
        strong
      />
      <Row
        label="95 % of such parts hold, 95 % sure"
        value={quantity.strength(characteristic.at95.value)}
        note={characteristic.at95.method}
        strong
      />
      {en1990 && (
        <Row
          label="EN 1990 Annex D, spread from the tests"
          value={quantity.strength(en1990.value)}
          note={`k = ${en1990.factor.toFixed(2)}`}
        />
      )}
      {mean !== undefined && (
        <Row
          label="Mean of those that broke"
          value={quantity.strength(mean)}
          note={
            deviation === undefined
              ? "no spread from one"
              : `± ${small(deviation)}, ${formatPercent(Number((deviation / mean).toPrecision(2)))}`
          }
        />
      )}
      <Row
        label="Tests"
        value={String(tests.length)}
        note={bounds === 0 ? "all broke" : `${bounds} of them only a bound`}
      />
    </dl>
  );
}

function Row({ label, value, note, strong }: { label: string; value: string; note: string; strong?: boolean }) {
  return (
    <div className={strong ? styles.strong : ""}>
      <dt>{label}</dt>
      <dd>
        <span className={styles.value}>{value}</span> <span className={styles.soft}>{note}</span>
      </dd>
    </div>
  );
}

function More({ report, fit }: Pick<Props, "fit"> & { report: GroupReport }) {
  return (
    <Disclosure level={4} title={`Fits, and what more tests would bring${best(report.narrowing)}`}>
      {fit && <PlotFigure plot={fit} />}
      {report.families.length > 0 && <Fits report={report} />}
      {report.failures.map(({ family, reason }) => (
        <p key={family} className={styles.note}>
          {capital(family)}: not fitted, {reason}.
        </p>
      ))}
      {report.batches && (
        <p className={styles.note}>
          Batches {report.batches.poolable ? "may be pooled" : "differ"}: k-sample Anderson–Darling{" "}
          {report.batches.statistic.toFixed(2)}, critical {report.batches.critical.toFixed(2)} at 5 %.
        </p>
      )}
      <MoreTests steps={report.narrowing} />
    </Disclosure>
  );
}

/** A difference beside loads in kilonewtons: in the same unit, however small. */
const small = (newtons: number): string => `${Number((newtons / 1000).toPrecision(2))} kN`;

const best = ([one]: readonly Narrowing[]): string => (one ? `: one more about +${small(Math.max(0, one.gain))}` : "");

function Fits({ report }: { report: GroupReport }) {
  const range = ([low, value, high]: readonly [number, number, number]) =>
    `${quantity.strength(value)} (${quantity.strength(low)} to ${quantity.strength(high)})`;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table that scrolls sideways must be reachable by keyboard
    <section className={styles.tableWrap} aria-label="Fitted distributions" tabIndex={0}>
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">Family</th>
            <th scope="col">Median (95 % interval)</th>
            <th scope="col">5 % value (95 % interval)</th>
            <th scope="col">AICc</th>
            <th scope="col">Anderson–Darling</th>
          </tr>
        </thead>
        <tbody>
          {report.families.map(({ fit, median, fivePercent, goodness }) => (
            <tr key={fit.family}>
              <th scope="row">
                {capital(fit.family)}
                {report.best === fit.family && " ◂ least"}
              </th>
              <td>{range(median)}</td>
              <td>{range(fivePercent)}</td>
              <td>{fit.aicc === undefined ? "too few tests" : fit.aicc.toFixed(1)}</td>
              <td>
                {goodness
                  ? `p ${goodness.significance < 0.01 ? "< 0.01" : `= ${goodness.significance.toFixed(2)}`}`
                  : "needs 5 exact"}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className={styles.note}>
        Less AICc fits better. The 5 % value of a fitted curve is a best guess; the values above are bounds, and those
        count.
      </p>
    </section>
  );
}

function MoreTests({ steps }: { steps: readonly Narrowing[] }) {
  if (steps.length === 0)
    return <p className={styles.note}>What more tests would bring cannot be said before two of them show a spread.</p>;
  return (
    <p className={styles.note}>
      If further tests scatter like these, the value at 75 % becomes about:{" "}
      {steps
        .map(
          ({ more, value, gain }) =>
            `${Number.isFinite(more) ? `${more} more` : "never more than"} ${quantity.strength(value)}${gain > 0 ? ` (+${small(gain)})` : ""}`,
        )
        .join("; ")}
      .
    </p>
  );
}
