import { roundTicks, type Scale, scaleOf } from "@secondline/figures";
import type { BreakTest, GroupReport } from "@secondline/strength";
import { formatForce } from "@secondline/words/formats";
import { sayBreakLog } from "@secondline/words/page/breakLog";
import { failureOf, type Grouped, groupsBy, isOutlier, loadOf, resultWords } from "@secondline/workbench";
import { rowsOf } from "@secondline/workbench/record";
import { useFrameSize } from "../time/useFrameSize.ts";
import { quantity } from "../words.ts";
import styles from "./figures.module.css";

const ROW_HEIGHT = 22;
const AXIS_HEIGHT = 38;

interface Props {
  tests: readonly BreakTest[];
  /** Largest load of the axis, the same for all groups of a log [N]. */
  most: number;
  report: GroupReport | undefined;
  wide: boolean;
}

/** Every test as a mark on one axis, a row for each way of failing. */
export function DotPlot({ tests, most, report, wide }: Props) {
  const { ref, size } = useFrameSize<HTMLElement>();
  const modes = groupsBy(tests, failureOf);
  return (
    <figure className={styles.figure} ref={ref}>
      {size.width > 0 && <Drawing {...{ modes, most, report, wide }} width={size.width} />}
    </figure>
  );
}

function Drawing({
  modes,
  most,
  report,
  wide,
  width,
}: Omit<Props, "tests"> & { modes: readonly Grouped[]; width: number }) {
  const x = scaleOf(0, most, wide ? 176 : 8, width - 14);
  const head = report ? 34 : 6;
  const laid = modes.map((mode) => ({
    ...mode,
    rows: rowsOf(
      mode.tests.map((test) => ({ from: x.px(loadOf(test)) - 7, to: x.px(loadOf(test)) + 7 })),
      1,
    ),
  }));
  let y = head;
  const placed = laid.map((mode) => {
    const top = y + (wide ? 0 : 16);
    const height = (Math.max(0, ...mode.rows) + 1) * ROW_HEIGHT;
    y = top + height + 4;
    return { ...mode, top, height };
  });
  const bottom = y;
  const exact = modes.flatMap(({ tests }) => tests).length;
  return (
    <svg
      className={styles.svg}
      width={width}
      height={bottom + AXIS_HEIGHT}
      viewBox={`0 0 ${width} ${bottom + AXIS_HEIGHT}`}
      role="img"
      aria-label={sayBreakLog("dotPlot.testsWayFailing", {
        exact,
        span: span(modes),
        list: modes.map(({ name, tests }) => `${name}: ${tests.length}`).join("; "),
      })}
    >
      {roundTicks(0, most / 1000, Math.floor(width / 90)).map((tick) => (
        <g key={tick}>
          <path className={styles.rule} d={`M${x.px(tick * 1000)} ${head}V${bottom}`} />
          <text className={styles.soft} x={x.px(tick * 1000)} y={bottom + 16} textAnchor="middle">
            {tick}
          </text>
        </g>
      ))}
      <path className={styles.axis} d={`M${x.px(0)} ${bottom}H${x.px(most)}`} />
      <text className={styles.soft} x={x.px(most)} y={bottom + 32} textAnchor="end">
        {sayBreakLog("dotPlot.breakingLoadKn")}
      </text>
      {report && <Bounds {...{ x, report, width }} top={head} bottom={bottom} />}
      {placed.map(({ name, tests, rows, top, height }) => (
        <g key={name}>
          <text className={`${styles.lane} ${styles.halo}`} x={0} y={wide ? top + height / 2 + 4 : top - 2}>
            {name}
          </text>
          {tests.map((test, i) => (
            <TestMark
              key={`${test.line ?? "typed"} ${loadOf(test)} ${rows[i]}`}
              {...{ test, x }}
              y={top + (rows[i] ?? 0) * ROW_HEIGHT + ROW_HEIGHT / 2}
              odd={isOutlier(test, report)}
            />
          ))}
        </g>
      ))}
    </svg>
  );
}

function span(modes: readonly Grouped[]): string {
  const loads = modes.flatMap(({ tests }) => tests.map(loadOf));
  return sayBreakLog("dotPlot.between", {
    from: quantity.strength(Math.min(...loads)),
    to: quantity.strength(Math.max(...loads)),
  });
}

/** Dot: it broke here. Open with an arrow: it holds at least, or at most, so much. Bar: somewhere between. */
function TestMark({ test, x, y, odd }: { test: BreakTest; x: Scale; y: number; odd: boolean }) {
  const { result } = test;
  const at = x.px(loadOf(test));
  return (
    <g>
      <title>{`${resultWords(test, formatForce)}${test.batch ? sayBreakLog("dotPlot.batch", { batch: test.batch }) : ""}${test.date ? `, ${test.date}` : ""}${test.note ? `. ${test.note}` : ""}`}</title>
      {result.kind === "exact" && <circle cx={at} cy={y} r="5" fill="var(--accent)" />}
      {result.kind === "above" && (
        <path d={`M${at + 5} ${y}h16m-5-4 5 4-5 4`} fill="none" stroke="var(--ink)" strokeWidth="1.5" />
      )}
      {result.kind === "below" && (
        <path d={`M${at - 5} ${y}h-16m5-4-5 4 5 4`} fill="none" stroke="var(--ink)" strokeWidth="1.5" />
      )}
      {(result.kind === "above" || result.kind === "below") && (
        <circle cx={at} cy={y} r="5" fill="var(--paper)" stroke="var(--ink)" strokeWidth="1.5" />
      )}
      {result.kind === "between" && (
        <path
          d={`M${x.px(result.from)} ${y - 5}v10M${x.px(result.from)} ${y}H${x.px(result.to)}M${x.px(result.to)} ${y - 5}v10`}
          stroke="var(--ink)"
          strokeWidth="1.75"
          fill="none"
        />
      )}
      {odd && (
        <>
          <circle cx={at} cy={y} r="9" fill="none" stroke="var(--fails-ink)" strokeWidth="1.75" />
          <text className={styles.halo} x={at + 13} y={y + 4} style={{ fill: "var(--fails-ink)" }}>
            {sayBreakLog("dotPlot.apartOthers")}
          </text>
        </>
      )}
    </g>
  );
}

/** What 95 % of such parts reach, as surely as asked. */
function Bounds({
  x,
  report,
  top,
  bottom,
}: {
  x: Scale;
  report: GroupReport;
  width: number;
  top: number;
  bottom: number;
}) {
  const { at75, at95 } = report.characteristic;
  const mark = (value: number, words: string, anchor: "start" | "end", y: number) => (
    <g key={words}>
      <path
        d={`M${x.px(value)} ${y + 3}V${bottom}`}
        stroke="var(--fails-ink)"
        strokeWidth="1.25"
        strokeDasharray={anchor === "end" ? "2 3" : "7 4"}
      />
      <text
        className={styles.halo}
        x={x.px(value) + (anchor === "end" ? -4 : 4)}
        y={y + 6}
        textAnchor={x.px(value) < 120 ? "start" : anchor}
        style={{ fill: "var(--fails-ink)" }}
      >
        {words}
      </text>
    </g>
  );
  return (
    <g>
      {[
        mark(at95.value, sayBreakLog("dotPlot.bound95"), "end", top - 26),
        mark(at75.value, sayBreakLog("dotPlot.bound75"), "start", top - 12),
      ]}
    </g>
  );
}
