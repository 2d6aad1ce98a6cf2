import { useId, useMemo, useRef, useState } from "react";
import { useFrameSize } from "../time/useFrameSize.ts";
import { calendarSpan, type Dated, datedOf, staysOf } from "./calendar.ts";
import { calendarTicks, dateWords, dayOf, isoOf } from "./days.ts";
import { EventMark } from "./EventMark.tsx";
import { entriesOf, moveDate, replaceEntry } from "./entryEdits.ts";
import { PART_KINDS, WEBBING_KINDS } from "./entryKinds.ts";
import styles from "./figures.module.css";
import { Grip } from "./Grip.tsx";
import { Patterns } from "./Patterns.tsx";
import { rowsOf } from "./rows.ts";
import { type Scale, scaleOf } from "./scale.ts";
import { Unspoken } from "./Unspoken.tsx";
import { useWear, useWearActions } from "./useWear.ts";

/** A take-down date with what surer and less sure would make of it; days since 1970. */
export interface Outlook {
  readonly day: number | undefined;
  readonly strict: number | undefined;
  readonly central: number | undefined;
  readonly words: string;
  readonly confidence: number;
}

/** When it hung and what was written down, the day that is shown, and the take-down date. */
export function CalendarFigure({ wide, outlook }: { wide: boolean; outlook: Outlook | undefined }) {
  const { ref, size } = useFrameSize<HTMLElement>();
  return (
    <figure className={styles.figure} ref={ref}>
      {size.width > 0 && <Drawing {...{ wide, outlook }} width={size.width} />}
    </figure>
  );
}

const HEAD = 34;
const STAY = 22;

function Drawing({ wide, outlook, width }: { wide: boolean; outlook: Outlook | undefined; width: number }) {
  const id = useId().replaceAll(":", "");
  const written = useWear((state) => state.history.present.record);
  const owner = useWear((state) => state.owner);
  const on = useWear((state) => state.on);
  const chosen = useWear((state) => state.entry);
  const { look } = useWearActions();
  const entries = entriesOf(written, owner);
  const kinds = owner.list === "webbings" ? WEBBING_KINDS : PART_KINDS;
  const dated = useMemo(() => datedOf(entries, kinds), [entries, kinds]);
  const today = dayOf(on) ?? 0;
  const [held, setHeld] = useState<[number, number]>();
  const ahead = [outlook?.day, outlook?.strict, outlook?.central].flatMap((day) => (day === undefined ? [] : [day]));
  const span =
    held ??
    calendarSpan(
      dated.map(({ day }) => day),
      today,
      ahead,
    );
  const x = scaleOf(span[0], span[1], wide ? 112 : 12, width - 14);
  const rowHeight = wide ? 28 : 34;
  const labels = wide && dated.length <= 18;
  const placed = place(dated, x, labels, width);
  const rows = Math.max(0, ...placed.map(({ row }) => row)) + 1;
  const top = HEAD + STAY + 12;
  const bottom = top + rows * rowHeight + 6;
  const shown = useRef(today);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing whose parts can be moved; no element of HTML is one
    <svg
      className={styles.svg}
      width={width}
      height={bottom + 30}
      viewBox={`0 0 ${width} ${bottom + 30}`}
      role="group"
      aria-label="Calendar of entries"
    >
      <Patterns id={id} />
      <Ticks {...{ x, bottom, wide, width }} />
      {outlook && <OutlookBand {...{ x, outlook, id, bottom, width }} today={x.px(today)} />}
      <Stays entries={entries} {...{ x, wide, today, id }} />
      {wide && (
        <text className={styles.lane} x={0} y={top + 18}>
          Entries
        </text>
      )}
      <Grip
        label="The day that is shown"
        text={dateWords(on)}
        value={today}
        min={Math.ceil(span[0])}
        max={Math.floor(span[1])}
        step={1}
        bigStep={30}
        perUnit={(x.px(span[1]) - x.px(span[0])) / (span[1] - span[0])}
        onBegin={() => {
          shown.current = today;
          setHeld(span);
        }}
        onBy={(by) =>
          look({
            on: isoOf(Math.min(Math.max(shown.current + Math.round(by), Math.ceil(span[0])), Math.floor(span[1]))),
          })
        }
        onEnd={() => setHeld(undefined)}
        data="on"
      >
        <OnLine at={x.px(today)} bottom={bottom} width={width} text={dateWords(on)} />
      </Grip>
      {placed.map((one) => (
        <DatedGrip
          key={one.entry}
          one={one}
          {...{ x, labels }}
          y={top + one.row * rowHeight + rowHeight / 2}
          chosen={chosen === one.entry}
          past={one.day <= today}
        />
      ))}
    </svg>
  );
}

function place(dated: readonly Dated[], x: Scale, labels: boolean, width: number) {
  const reach = dated.map(({ day, label }) => {
    const at = x.px(day);
    const room = labels ? label.length * 6.3 + 6 : 0;
    const left = at + 14 + room > width;
    return left ? { from: at - 13 - room, to: at + 13 } : { from: at - 13, to: at + 13 + room };
  });
  const rows = rowsOf(reach, 3);
  return dated.map((one, i) => ({ ...one, row: rows[i] ?? 0, left: (reach[i]?.from ?? 0) < x.px(one.day) - 14 }));
}

function Ticks({ x, bottom, wide, width }: { x: Scale; bottom: number; wide: boolean; width: number }) {
  const ticks = calendarTicks(x.from, x.to, Math.floor(width / (wide ? 52 : 44)));
  return (
    <Unspoken>
      {ticks.map(({ day, label, year }) => (
        <g key={day}>
          <path className={year ? styles.axis : styles.rule} d={`M${x.px(day)} ${HEAD}V${bottom}`} />
          <text
            x={x.px(day)}
            y={bottom + 17}
            textAnchor="middle"
            className={year ? "" : styles.soft}
            fontWeight={year ? 600 : 400}
          >
            {label}
          </text>
        </g>
      ))}
      <path className={styles.axis} d={`M${x.px(x.from)} ${bottom}H${x.px(x.to)}`} />
    </Unspoken>
  );
}

function Stays({
  entries,
  x,
  wide,
  today,
  id,
}: {
  entries: Parameters<typeof staysOf>[0];
  x: Scale;
  wide: boolean;
  today: number;
  id: string;
}) {
  return (
    <g>
      {wide && (
        <text className={styles.lane} x={0} y={HEAD + 15}>
          Outside
        </text>
      )}
      {staysOf(entries).map(({ from, to, label }) => {
        const end = Math.max(from, Math.min(to ?? today, x.to));
        const [left, right] = [x.px(from), x.px(end)];
        const letters = Math.floor((right - left - 10) / 6.3);
        const shown = label.length <= letters ? label : `${label.slice(0, Math.max(0, letters - 1))}…`;
        return (
          <g key={from}>
            <title>{`${label}, ${dateWords(isoOf(from))} to ${to === undefined ? "now" : dateWords(isoOf(to))}`}</title>
            <rect
              x={left}
              y={HEAD}
              width={Math.max(2, right - left)}
              height={STAY}
              rx="2"
              fill={`url(#${id}-span)`}
              stroke="var(--soft-ink)"
            />
            {letters > 5 && (
              <text className={styles.halo} x={(left + right) / 2} y={HEAD + 15} textAnchor="middle">
                {shown}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}

function OnLine({ at, bottom, width, text }: { at: number; bottom: number; width: number; text: string }) {
  const half = (text.length * 6.6 + 20) / 2;
  const middle = Math.min(Math.max(at, half), width - half);
  return (
    <>
      <rect x={at - 12} y={HEAD} width={24} height={bottom - HEAD} fill="transparent" />
      <path d={`M${at} 26V${bottom}`} stroke="var(--accent)" strokeWidth="2" />
      <rect x={middle - half} y={2} width={2 * half} height={24} rx="12" fill="var(--accent)" />
      <rect className={styles.focus} x={middle - half - 3} y={-1} width={2 * half + 6} height={30} rx="15" />
      <text x={middle} y={18} textAnchor="middle" style={{ fill: "var(--on-accent)" }} fontWeight="500">
        {text}
      </text>
    </>
  );
}

/** From what the strictest answer says to the central one, with the date at the chosen confidence. */
function OutlookBand({
  x,
  outlook,
  id,
  bottom,
  width,
  today,
}: {
  x: Scale;
  outlook: Outlook;
  id: string;
  bottom: number;
  width: number;
  today: number;
}) {
  const { day, strict, central, words } = outlook;
  const clip = (value: number | undefined) => x.px(Math.min(value ?? x.to, x.to));
  if (strict === undefined && day === undefined && central === undefined) return null;
  const [left, right] = [clip(strict), clip(central)];
  const at = day === undefined ? undefined : x.px(Math.min(day, x.to));
  const room = words.length * 6.5 + 12;
  const before = at !== undefined && at + room > width;
  // Not over the bars of the past: the sentence beside the calendar says it as well.
  const fits = at !== undefined && (!before || at - room > today);
  return (
    <Unspoken>
      <rect
        x={left}
        y={HEAD}
        width={Math.max(2, right - left)}
        height={bottom - HEAD}
        fill={`url(#${id}-short)`}
        opacity="0.45"
      />
      {at !== undefined && (
        <>
          <path d={`M${at} ${HEAD - 4}V${bottom}`} stroke="var(--fails-ink)" strokeWidth="2" strokeDasharray="7 4" />
          <path d={`M${at} ${HEAD + 2}l-6-10h12z`} fill="var(--fails-ink)" />
          {fits && (
            <text
              className={styles.halo}
              x={before ? at - 8 : at + 8}
              y={HEAD + 15}
              textAnchor={before ? "end" : "start"}
              style={{ fill: "var(--fails-ink)" }}
              fontWeight="600"
            >
              {words}
            </text>
          )}
        </>
      )}
    </Unspoken>
  );
}

type Placed = ReturnType<typeof place>[number];

/** An entry that can be moved to another day. It follows the hand and takes its place in the record when let go. */
function DatedGrip({
  one,
  x,
  y,
  labels,
  chosen,
  past,
}: {
  one: Placed;
  x: Scale;
  y: number;
  labels: boolean;
  chosen: boolean;
  past: boolean;
}) {
  const written = useWear((state) => state.history.present.record);
  const owner = useWear((state) => state.owner);
  const { edit, finish, look } = useWearActions();
  const [by, setBy] = useState(0);
  const day = one.day + by;
  const at = x.px(day);
  function settle(days: number): void {
    setBy(0);
    const before = entriesOf(written, owner)[one.entry];
    const whole = Math.round(days);
    if (!before || whole === 0) return;
    finish();
    const after = replaceEntry(written, owner, one.entry, moveDate(before, whole));
    edit(after.record, "an entry moved to another day");
    look({ entry: after.entry });
    // The entry may stand elsewhere in the order now; the keyboard stays with it.
    requestAnimationFrame(() => document.querySelector<SVGElement>(`[data-grip="date ${after.entry}"]`)?.focus());
  }
  return (
    <Grip
      label={`Date of: ${one.words}`}
      text={dateWords(isoOf(day))}
      value={day}
      min={Math.ceil(x.from)}
      max={Math.floor(x.to)}
      step={1}
      bigStep={30}
      perUnit={(x.px(x.to) - x.px(x.from)) / (x.to - x.from)}
      onBegin={() => look({ entry: one.entry })}
      onBy={setBy}
      onEnd={settle}
      data={`date ${one.entry}`}
    >
      <circle cx={at} cy={y} r="14" fill="transparent" />
      <EventMark event={one.event} x={at} y={y} strong={chosen} />
      <circle className={styles.focus} cx={at} cy={y} r="14" />
      {(labels || by !== 0) && (
        <text
          className={`${styles.halo} ${past ? "" : styles.soft}`}
          x={one.left ? at - 15 : at + 15}
          y={y + 4}
          textAnchor={one.left ? "end" : "start"}
        >
          {by === 0 ? one.label : dateWords(isoOf(day))}
        </text>
      )}
    </Grip>
  );
}
