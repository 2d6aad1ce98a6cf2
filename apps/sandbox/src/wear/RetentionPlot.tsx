import { GENERIC_STOCKS, type LineStock } from "@secondline/rig";
import { type BreakTest, type Retention, stockRetention } from "@secondline/strength";
import { useMemo } from "react";
import { roundTicks } from "../design/roundTicks.ts";
import { useFrameSize } from "../time/index.ts";
import { quantity } from "../words.ts";
import styles from "./figures.module.css";
import { labelHeights } from "./labelHeights.ts";
import { scaleOf } from "./scale.ts";
import wear from "./wear.module.css";

interface Shown {
  readonly stock: LineStock;
  readonly retention: Retention;
  readonly tests: readonly BreakTest[];
}

/** How strength goes down with sun: as built in, and with the log's own tests taken in. */
export function RetentionPlots({ tests, wide }: { tests: readonly BreakTest[]; wide: boolean }) {
  const found = useMemo(() => retentions(tests), [tests]);
  return found.map((one) =>
    "problem" in one ? (
      <p key={one.name} className={wear.note}>
        {one.name}: {one.problem}
      </p>
    ) : (
      <section key={one.stock.id} className={wear.group} aria-label={`${one.stock.name} over months of full sun`}>
        <h3 className={wear.h3}>{one.stock.name}: strength over months of full sun</h3>
        <RetentionPlot shown={one} wide={wide} />
      </section>
    ),
  );
}

type Found = Shown | { readonly name: string; readonly problem: string };

function retentions(tests: readonly BreakTest[]): Found[] {
  return [...GENERIC_STOCKS.values()].flatMap((stock): Found[] => {
    const own = tests.filter((test) => test.material === stock.id || test.material === stock.name);
    if (own.length === 0) return [];
    try {
      const { sun } = stockRetention(stock, own);
      return sun
        ? [
            {
              stock,
              retention: sun,
              tests: own.filter((t) => !t.wet && (t.falls ?? 0) === 0 && t.sunMonths !== undefined),
            },
          ]
        : [];
    } catch (error) {
      return [
        {
          name: stock.name,
          problem: `the curve over sun is not drawn: ${error instanceof Error ? error.message : String(error)}.`,
        },
      ];
    }
  });
}

const STEPS = 48;

function RetentionPlot({ shown, wide }: { shown: Shown; wide: boolean }) {
  const { ref, size } = useFrameSize<HTMLElement>();
  const { retention, stock } = shown;
  const now = retention.posterior(retention.validTo / 2, 0.95);
  return (
    <figure className={styles.figure} ref={ref}>
      {size.width > 0 && <Drawing {...{ shown, wide }} width={size.width} />}
      <figcaption className={styles.caption}>
        {`Rests on ${retention.testCount} own tests and: ${retention.basis.note}. At ${retention.validTo / 2} months: ${quantity.strength(now.central)} central, ${quantity.strength(now.lower)} reached with 95 % confidence. The tests bear out ${retention.slope.posterior.toFixed(2)} of the built-in loss, on the logarithm. Of every kind of test of ${stock.name}, only those with sun alone count.`}
      </figcaption>
    </figure>
  );
}

function Drawing({ shown: { retention, tests }, wide, width }: { shown: Shown; wide: boolean; width: number }) {
  const height = wide ? 220 : 200;
  const x = scaleOf(0, retention.validTo, 34, width - (wide ? 128 : 12));
  const doses = Array.from({ length: STEPS + 1 }, (_, i) => (retention.validTo * i) / STEPS);
  const prior = doses.map((dose) => retention.prior(dose, 0.95));
  const posterior = doses.map((dose) => retention.posterior(dose, 0.95));
  const loads = tests.map(({ result }) => (result.kind === "between" ? result.from : result.value));
  const most = Math.max(...loads, ...prior.map((v) => v.central), ...posterior.map((v) => v.central)) * 1.08;
  const y = scaleOf(0, most, height, 8);
  const line = (values: readonly number[]) =>
    values
      .map((value, i) => `${i === 0 ? "M" : "L"}${x.px(doses[i] ?? 0).toFixed(1)} ${y.px(value).toFixed(1)}`)
      .join("");
  const curves = [
    { name: "both, central", values: posterior.map((v) => v.central), stroke: "var(--accent)", width: 2.5, dash: "" },
    { name: "both, 95 % sure", values: posterior.map((v) => v.lower), stroke: "var(--accent)", width: 1.5, dash: "" },
    {
      name: "built in, central",
      values: prior.map((v) => v.central),
      stroke: "var(--soft-ink)",
      width: 1.5,
      dash: "7 4",
    },
    { name: "built in, 95 %", values: prior.map((v) => v.lower), stroke: "var(--soft-ink)", width: 1.25, dash: "2 3" },
  ];
  const labels = labelHeights(curves.map(({ values }) => y.px(values.at(-1) ?? 0)));
  return (
    <svg
      className={styles.svg}
      width={width}
      height={height + 40}
      viewBox={`0 0 ${width} ${height + 40}`}
      role="img"
      aria-label="Strength over months of full sun, as built in and with own tests"
    >
      {roundTicks(0, most / 1000, 4).map((tick) => (
        <g key={tick}>
          <path className={styles.rule} d={`M${x.px(0)} ${y.px(tick * 1000)}H${x.px(x.to)}`} />
          <text className={styles.soft} x={x.px(0) - 6} y={y.px(tick * 1000) + 4} textAnchor="end">
            {tick}
          </text>
        </g>
      ))}
      {roundTicks(0, x.to, wide ? 8 : 5).map((tick) => (
        <text key={tick} className={styles.soft} x={x.px(tick)} y={height + 16} textAnchor="middle">
          {tick}
        </text>
      ))}
      <path className={styles.axis} d={`M${x.px(0)} ${height}H${x.px(x.to)}`} />
      <text className={styles.soft} x={x.px(x.to)} y={height + 34} textAnchor="end">
        kN over months of full sun
      </text>
      {curves.map(({ name, values, stroke, width: thick, dash }, i) => (
        <g key={name}>
          <path d={line(values)} fill="none" stroke={stroke} strokeWidth={thick} strokeDasharray={dash} />
          {wide && (
            <text className={styles.halo} x={x.px(x.to) + 6} y={(labels[i] ?? 0) + 4} style={{ fill: stroke }}>
              {name}
            </text>
          )}
        </g>
      ))}
      {tests.map((test, i) => {
        const at = x.px(test.sunMonths ?? 0);
        const load = loads[i] ?? 0;
        const exact = test.result.kind === "exact";
        return (
          <circle
            key={`${test.line ?? ""} ${load} ${at}`}
            cx={at}
            cy={y.px(load)}
            r="4.5"
            fill={exact ? "var(--ink)" : "var(--paper)"}
            stroke="var(--ink)"
            strokeWidth="1.5"
          />
        );
      })}
    </svg>
  );
}
