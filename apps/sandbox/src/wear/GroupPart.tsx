import type { Plot } from "@secondline/figures";
import type { BreakTest, GroupReport, Narrowing } from "@secondline/strength";
import { broughtIn, capital } from "@secondline/words";
import { sayBreakLog } from "@secondline/words/page/breakLog";
import { groupTitle } from "@secondline/workbench";
import { Disclosure } from "../design/Disclosure.tsx";
import { quantity } from "../words.ts";
import { DotPlot } from "./DotPlot.tsx";
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
  const title = tests[0] ? groupTitle(tests[0]) : name;
  return (
    <section className={styles.group} aria-label={title}>
      <h3 className={styles.h3}>{capital(title)}</h3>
      <DotPlot {...{ tests, most, report, wide }} />
      {report ? (
        <>
          {report.doubts.length > 0 && (
            <ul className={styles.flags} aria-label={sayBreakLog("groupPart.doubts")}>
              {report.doubts.map(({ message }) => (
                <li key={message}>
                  <span aria-hidden="true" className={styles.flagMark}>
                    ▲
                  </span>
                  <span>{broughtIn(message)}</span>
                </li>
              ))}
            </ul>
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
  const { tests, sample, mean, deviation, characteristic, en1990 } = report;
  const bounds = sample.filter(({ kind }) => kind !== "exact").length;
  return (
    <dl className={styles.numbers}>
      <Row
        label={sayBreakLog("groupPart.bound75")}
        value={quantity.strength(characteristic.at75.value)}
        note={broughtIn(characteristic.at75.method)}
        strong
      />
      <Row
        label={sayBreakLog("groupPart.bound95")}
        value={quantity.strength(characteristic.at95.value)}
        note={broughtIn(characteristic.at95.method)}
        strong
      />
      {en1990 && (
        <Row
          label={sayBreakLog("groupPart.en1990")}
          value={quantity.strength(en1990.value)}
          note={sayBreakLog("groupPart.k", { factor: quantity.rounded(en1990.factor, 2, "up") })}
        />
      )}
      {mean !== undefined && (
        <Row
          label={sayBreakLog("groupPart.mean")}
          value={quantity.strength(mean)}
          note={
            deviation === undefined
              ? sayBreakLog("groupPart.noSpread")
              : `± ${quantity.load(deviation)}, ${quantity.percent(deviation / mean, "up")}`
          }
        />
      )}
      <Row
        label={sayBreakLog("groupPart.tests")}
        value={String(tests.length)}
        note={bounds === 0 ? sayBreakLog("groupPart.allBroke") : sayBreakLog("groupPart.boundCount", { bounds })}
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
    <Disclosure level={4} title={sayBreakLog("groupPart.fitsTitle", { best: best(report.narrowing) })}>
      {fit && <PlotFigure plot={fit} />}
      {report.families.length > 0 && <Fits report={report} />}
      {report.failures.map(({ family, reason }) => (
        <p key={family} className={styles.note}>
          {sayBreakLog("groupPart.notFitted", { family: capital(broughtIn(family)), reason: broughtIn(reason) })}
        </p>
      ))}
      {report.batches && (
        <p className={styles.note}>
          {sayBreakLog("groupPart.batchTest", {
            pooled: report.batches.poolable ? sayBreakLog("groupPart.mayPooled") : sayBreakLog("groupPart.differ"),
            statistic: quantity.rounded(report.batches.statistic, 2, "nearest"),
            critical: quantity.rounded(report.batches.critical, 2, "nearest"),
          })}
        </p>
      )}
      <MoreTests steps={report.narrowing} />
    </Disclosure>
  );
}

/** A difference beside loads in kilonewtons: in the same unit, however small. */
const small = (newtons: number): string => `${quantity.number(Number((newtons / 1000).toPrecision(2)))} kN`;

const best = ([one]: readonly Narrowing[]): string =>
  one ? sayBreakLog("groupPart.gainOfOneMore", { small: small(Math.max(0, one.gain)) }) : "";

function Fits({ report }: { report: GroupReport }) {
  const range = ([low, value, high]: readonly [number, number, number]) =>
    sayBreakLog("groupPart.value", {
      value: quantity.strength(value),
      from: quantity.strength(low),
      to: quantity.strength(high),
    });
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table that scrolls sideways must be reachable by keyboard
    <section className={styles.tableWrap} aria-label={sayBreakLog("groupPart.fittedDistributions")} tabIndex={0}>
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">{sayBreakLog("groupPart.family")}</th>
            <th scope="col">{sayBreakLog("groupPart.median")}</th>
            <th scope="col">{sayBreakLog("groupPart.fivePercentValue")}</th>
            <th scope="col">{sayBreakLog("groupPart.aicc")}</th>
            <th scope="col">{sayBreakLog("groupPart.andersonDarling")}</th>
          </tr>
        </thead>
        <tbody>
          {report.families.map(({ fit, median, fivePercent, goodness }) => (
            <tr key={fit.family}>
              <th scope="row">
                {capital(broughtIn(fit.family))}
                {report.best === fit.family && sayBreakLog("groupPart.least")}
              </th>
              <td>{range(median)}</td>
              <td>{range(fivePercent)}</td>
              <td>
                {fit.aicc === undefined
                  ? sayBreakLog("groupPart.tooFewTests")
                  : quantity.rounded(fit.aicc, 1, "nearest")}
              </td>
              <td>
                {goodness
                  ? sayBreakLog("groupPart.p", {
                      significance:
                        goodness.significance < 0.01
                          ? `< ${quantity.number(0.01)}`
                          : `= ${quantity.rounded(goodness.significance, 2, "nearest")}`,
                    })
                  : sayBreakLog("groupPart.tooFewForGoodness")}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className={styles.note}>{sayBreakLog("groupPart.aiccNote")}</p>
    </section>
  );
}

function MoreTests({ steps }: { steps: readonly Narrowing[] }) {
  if (steps.length === 0) return <p className={styles.note}>{sayBreakLog("groupPart.gainUnknown")}</p>;
  return (
    <p className={styles.note}>
      {sayBreakLog("groupPart.gainNote")}{" "}
      {steps
        .map(
          ({ more, value, gain }) =>
            `${Number.isFinite(more) ? sayBreakLog("groupPart.more", { more }) : sayBreakLog("groupPart.gainAtMost")} ${quantity.strength(value)}${gain > 0 ? ` (+${small(gain)})` : ""}`,
        )
        .join("; ")}
      .
    </p>
  );
}
