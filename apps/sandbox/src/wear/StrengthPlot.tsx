import { formatForce, formatLength } from "@secondline/rig";
import type { StrengthZone, WebbingState } from "@secondline/strength";
import { type ReactNode, useRef } from "react";
import styles from "./figures.module.css";
import { Grip } from "./Grip.tsx";
import { labelHeights } from "./labelHeights.ts";
import { roundTicks, type Scale, scaleOf } from "./scale.ts";
import { Unspoken } from "./Unspoken.tsx";
import type { Needed } from "./useWear.ts";
import { weakest, zonesWithin, zoneWords } from "./wearWords.ts";

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

/** A short trace must not vanish between two pixels [px]. */
const LEAST = 3;

export function StrengthPlot(props: Props) {
  const { x, zones, needed, state, id, wide, width, top, height } = props;
  const most = Math.max(needed?.needed ?? 0, ...zones.map((zone) => zone.strength));
  const y = scaleOf(0, most * 1.12, top + height, top);
  const loaded = state.placement ? zonesWithin(zones, state.placement.from, state.placement.to) : zones;
  const worst = weakest(loaded);
  const last = zones.at(-1);
  return (
    <g>
      <text className={`${styles.lane} ${styles.halo}`} x={0} y={top - 6}>
        Still holds, kN
      </text>
      {roundTicks(0, y.to / 1000, 4).map((tick) => (
        <Unspoken key={tick}>
          <path className={styles.rule} d={`M${x.px(x.from)} ${y.px(tick * 1000)}H${x.px(x.to)}`} />
          <text className={styles.soft} x={x.px(x.from) - 6} y={y.px(tick * 1000) + 4} textAnchor="end">
            {tick}
          </text>
        </Unspoken>
      ))}
      {needed &&
        loaded.map((zone) => <Short key={zone.from} {...{ x, y, zone, id }} needed={needed.needed} state={state} />)}
      <path d={steps(zones, "strength", x, y)} fill="none" stroke="var(--ink)" strokeWidth="1.25" />
      <path d={steps(zones, "strength5", x, y)} fill="none" stroke="var(--accent)" strokeWidth="2.5" />
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
      <ReadOff {...props} y={y} worst={worst} />
    </g>
  );
}

/** A step curve; zones too short to see are drawn a little wider than they are. */
function steps(zones: readonly StrengthZone[], key: "strength" | "strength5", x: Scale, y: Scale): string {
  const level = zones.map((zone, i) => {
    const at = `${y.px(zone[key]).toFixed(1)}`;
    const [left, right] = edges(zone, x);
    return `${i === 0 ? "M" : "L"}${left.toFixed(1)} ${at}H${right.toFixed(1)}`;
  });
  return level.join("");
}

function edges(zone: StrengthZone, x: Scale): [number, number] {
  const [left, right] = [x.px(zone.from), x.px(zone.to)];
  const more = Math.max(0, LEAST - (right - left)) / 2;
  return [left - more, right + more];
}

/** Where the value that 95 % reach lies below what is needed. */
function Short({
  x,
  y,
  zone,
  needed,
  id,
  state,
}: {
  x: Scale;
  y: Scale;
  zone: StrengthZone;
  needed: number;
  id: string;
  state: WebbingState;
}) {
  if (zone.strength5 >= needed || !state.placement) return null;
  const clipped = {
    ...zone,
    from: Math.max(zone.from, state.placement.from),
    to: Math.min(zone.to, state.placement.to),
  };
  const [left, right] = edges(clipped, x);
  return (
    <rect
      x={left}
      y={y.px(needed)}
      width={right - left}
      height={y.px(zone.strength5) - y.px(needed)}
      fill={`url(#${id}-short)`}
    />
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
    { text: "central", value: last.strength, fill: "var(--ink)" },
    { text: "95 % hold", value: last.strength5, fill: "var(--accent)" },
    ...(needed
      ? [{ text: `needs ${formatForce(needed.needed)}`, value: needed.needed, fill: "var(--fails-ink)" }]
      : []),
  ];
  const heights = labelHeights(labels.map(({ value }) => y.px(value) + (wide ? 4 : -6)));
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
  const at = (x.px(worst.from) + x.px(worst.to)) / 2;
  const below = y.px(worst.strength5);
  const text = `${formatForce(worst.strength5)}, ${worst.reason}`;
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

/** A line to read off what it holds at a place; starts at the weakest one. */
function ReadOff({
  x,
  y,
  zones,
  top,
  height,
  read,
  onRead,
  worst,
}: Props & { y: Scale; worst: StrengthZone | undefined }) {
  const first = zones[0];
  const last = zones.at(-1);
  const start = read ?? (worst ? (worst.from + worst.to) / 2 : 0);
  if (!first || !last) return null;
  const place = Math.min(Math.max(start, first.from), last.to);
  const here = weakest(zones.filter((zone) => zone.from <= place && place <= zone.to)) ?? first;
  const base = y.px(0);
  return (
    <Reader
      {...{ x, place, here, base, top, height, onRead }}
      min={first.from}
      max={last.to}
      shown={read !== undefined}
    />
  );
}

interface ReaderProps {
  x: Scale;
  place: number;
  here: StrengthZone;
  base: number;
  top: number;
  height: number;
  min: number;
  max: number;
  shown: boolean;
  onRead: (place: number) => void;
}

function Reader({ x, place, here, base, top, height, min, max, shown, onRead }: ReaderProps) {
  const at = x.px(place);
  const right = at < (x.px(x.from) + x.px(x.to)) / 2;
  const clamped = (value: number) => onRead(Math.min(Math.max(value, min), max));
  const words = `${formatLength(place)}: ${zoneWords(here)}`;
  return (
    <>
      <Moving {...{ place, clamped, min, max, words }} perUnit={(x.px(x.to) - x.px(x.from)) / (x.to - x.from)}>
        <rect x={at - 12} y={top} width={24} height={height + 22} fill="transparent" />
        <rect className={styles.focus} x={at - 9} y={base - 9} width={18} height={18} rx="9" />
        {shown && <path d={`M${at} ${top}V${base}`} stroke="var(--soft-ink)" strokeWidth="1" />}
        <circle cx={at} cy={base} r="6" fill="var(--raised)" stroke="var(--accent)" strokeWidth="2" />
      </Moving>
      {shown && (
        <text className={styles.halo} x={right ? at + 8 : at - 8} y={top + 14} textAnchor={right ? "start" : "end"}>
          {`${formatLength(place)}: ${formatForce(here.strength)} / ${formatForce(here.strength5)}, ${here.reason}`}
        </text>
      )}
    </>
  );
}

function Moving({
  place,
  clamped,
  min,
  max,
  words,
  perUnit,
  children,
}: {
  place: number;
  clamped: (value: number) => void;
  min: number;
  max: number;
  words: string;
  perUnit: number;
  children: ReactNode;
}) {
  const start = useRef(place);
  return (
    <Grip
      label="Read off at"
      text={words}
      value={place}
      step={0.1}
      bigStep={1}
      onBegin={() => {
        start.current = place;
      }}
      onBy={(by) => clamped(start.current + by)}
      {...{ min, max, perUnit }}
    >
      {children}
    </Grip>
  );
}
