import { labelHeights, roundTicks, type Scale, scaleOf } from "@secondline/figures";
import { shortfall, strengthPath } from "@secondline/figures/wear";
import type { StrengthZone, WebbingState } from "@secondline/strength";
import { broughtIn } from "@secondline/words";
import { formatLength } from "@secondline/words/formats";
import { sayWear } from "@secondline/words/page/wear";
import { type Needed, weakest, zonesWithin } from "@secondline/workbench/record";
import { quantity } from "../words.ts";
import styles from "./figures.module.css";
import { ReadOff } from "./StrengthReader.tsx";
import { Unspoken } from "./Unspoken.tsx";

interface Props {
  x: Scale;
  zones: readonly StrengthZone[];
  needed: Needed | undefined;
  state: WebbingState;
  id: string;
  wide: boolean;
  width: number;
  top: number;
  height: number;
  /** Place that is read off [m]. */
  read: number | undefined;
  onRead: (place: number) => void;
}

export function StrengthPlot(props: Props) {
  const { x, zones, needed, state, id, wide, width, top, height } = props;
  const most = Math.max(needed?.needed ?? 0, ...zones.map((zone) => zone.strength));
  const y = scaleOf(0, most * 1.12, top + height, top);
  const loaded = state.placement ? zonesWithin(zones, state.placement.from, state.placement.to) : zones;
  const worst = weakest(loaded);
  // The curves are named where they leave the picture.
  const last = zones.findLast((zone) => zone.from < x.to - 1e-9);
  return (
    <g>
      <text className={`${styles.lane} ${styles.halo}`} x={0} y={top - 6}>
        {sayWear("strengthPlot.axis")}
      </text>
      {roundTicks(0, y.to / 1000, 4).map((tick) => (
        <Unspoken key={tick}>
          <path className={styles.rule} d={`M${x.px(x.from)} ${y.px(tick * 1000)}H${x.px(x.to)}`} />
          <text className={styles.soft} x={x.px(x.from) - 6} y={y.px(tick * 1000) + 4} textAnchor="end">
            {tick}
          </text>
        </Unspoken>
      ))}
      <g clipPath={`url(#${id}-sight)`}>
        {needed &&
          loaded.map((zone) => {
            const short = shortfall(zone, needed.needed, state.placement, x, y);
            return short && <rect key={zone.from} {...short} fill={`url(#${id}-short)`} />;
          })}
        <path d={strengthPath(zones, "strength", x, y)} fill="none" stroke="var(--ink)" strokeWidth="1.25" />
        <path d={strengthPath(zones, "strength5", x, y)} fill="none" stroke="var(--accent)" strokeWidth="2.5" />
      </g>
      {needed && (
        <path
          d={`M${x.px(x.from)} ${y.px(needed.needed)}H${x.px(x.to)}`}
          stroke="var(--fails-ink)"
          strokeWidth="1.75"
          strokeDasharray="7 4"
        />
      )}
      {last && <Labels {...{ x, y, last, needed, wide }} />}
      {worst && <Worst {...{ x, y, worst, width }} />}
      <ReadOff {...props} {...{ y, worst }} />
    </g>
  );
}

interface LabelProps {
  x: Scale;
  y: Scale;
  last: StrengthZone;
  needed: Needed | undefined;
  wide: boolean;
}

/** The curves by name, in the margin, or over their ends where there is none. */
function Labels({ x, y, last, needed, wide }: LabelProps) {
  const labels = [
    { text: sayWear("strengthPlot.middle"), value: last.strength, fill: "var(--ink)" },
    { text: sayWear("strengthPlot.strength5"), value: last.strength5, fill: "var(--accent)" },
    ...(needed
      ? [
          {
            text: sayWear("strengthPlot.needs", { load: quantity.load(needed.needed) }),
            value: needed.needed,
            fill: "var(--fails-ink)",
          },
        ]
      : []),
  ];
  // Over their curves they make room upwards: below a label lies its own curve.
  const heights = wide
    ? labelHeights(labels.map(({ value }) => y.px(value) + 4))
    : labelHeights(labels.map(({ value }) => 6 - y.px(value))).map((height) => -height);
  return labels.map(({ text, fill }, i) => (
    <text
      key={text}
      className={styles.halo}
      x={wide ? x.px(x.to) + 6 : x.px(x.to) - 30}
      y={heights[i]}
      textAnchor={wide ? "start" : "end"}
      style={{ fill }}
      fontWeight="500"
    >
      {text}
    </text>
  ));
}

function Worst({ x, y, worst, width }: { x: Scale; y: Scale; worst: StrengthZone; width: number }) {
  const place = (worst.from + worst.to) / 2;
  if (place < x.from || place > x.to) return <Elsewhere {...{ x, y, worst }} before={place < x.from} />;
  const at = x.px(place);
  const below = y.px(worst.strength5);
  const text = `${quantity.strength(worst.strength5)}, ${broughtIn(worst.reason)}`;
  const flip = at + 14 + text.length * 6.3 > width - 8;
  return (
    <Unspoken>
      <path d={`M${at} ${below + 3}l-5 9h10z`} fill="var(--ink)" />
      <text
        className={styles.halo}
        x={flip ? at - 10 : at + 10}
        y={Math.min(below + 16, y.px(0) - 5)}
        textAnchor={flip ? "end" : "start"}
        fontWeight="500"
      >
        {text}
      </text>
    </Unspoken>
  );
}

/** The weakest place lies out of sight: where, at the edge it lies beyond. */
function Elsewhere({ x, y, worst, before }: { x: Scale; y: Scale; worst: StrengthZone; before: boolean }) {
  const words = sayWear("strengthPlot.at", {
    strength: quantity.strength(worst.strength5),
    place: formatLength((worst.from + worst.to) / 2),
  });
  return (
    <Unspoken>
      <text
        className={styles.halo}
        x={before ? x.px(x.from) + 4 : x.px(x.to) - 4}
        y={y.px(0) - 8}
        textAnchor={before ? "start" : "end"}
        fontWeight="500"
      >
        {before
          ? sayWear("strengthPlot.weakestLeft", { what: words })
          : sayWear("strengthPlot.weakestRight", { what: words })}
      </text>
    </Unspoken>
  );
}
