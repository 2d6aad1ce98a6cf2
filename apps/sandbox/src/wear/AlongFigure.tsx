import { formatForce, formatLength } from "@secondline/rig";
import { useId, useMemo, useRef, useState } from "react";
import { useFrameSize } from "../time/useFrameSize.ts";
import { entriesOf, type Grip as GripEnd, movePlace, replaceEntry } from "./entryEdits.ts";
import { placeOf } from "./entryKinds.ts";
import styles from "./figures.module.css";
import { LaneRows, lanesHeight, layLanes } from "./LaneRows.tsx";
import { lanesOf } from "./lanes.ts";
import { Patterns } from "./Patterns.tsx";
import { RIBBON_HEIGHT, Ribbon } from "./Ribbon.tsx";
import { StrengthPlot } from "./StrengthPlot.tsx";
import { roundTicks, type Scale, scaleOf } from "./scale.ts";
import { Unspoken } from "./Unspoken.tsx";
import { useWear, useWearActions, type WebbingFacts } from "./useWear.ts";
import { weakest, zonesWithin, zoneWords } from "./wearWords.ts";

/** The webbing from its marked end: what lies where on it, and below on the same scale what it still holds. */
export function AlongFigure({ facts, wide }: { facts: WebbingFacts; wide: boolean }) {
  const { ref, size } = useFrameSize<HTMLElement>();
  const id = useId().replaceAll(":", "");
  return (
    <figure className={styles.figure} ref={ref}>
      {size.width > 0 && <Drawing {...{ facts, wide, id }} width={size.width} />}
      <figcaption className={styles.caption}>{captionOf(facts)}</figcaption>
    </figure>
  );
}

function Drawing({ facts, wide, id, width }: { facts: WebbingFacts; wide: boolean; id: string; width: number }) {
  const { state, zones, needed } = facts;
  const written = useWear((wear) => wear.history.present.record);
  const owner = useWear((wear) => wear.owner);
  const on = useWear((wear) => wear.on);
  const chosen = useWear((wear) => wear.entry);
  const entries = entriesOf(written, owner);
  const length = Math.max(state.to, ...entries.flatMap((entry) => placeOf(entry)?.to ?? []));
  const x = useMemo(() => scaleOf(0, length, wide ? 112 : 34, width - (wide ? 92 : 12)), [length, wide, width]);
  const lanes = layLanes(lanesOf(entries, state, on), x, width, wide);
  const move = useMove(length);
  const top = RIBBON_HEIGHT;
  const plotTop = top + lanesHeight(lanes) + (wide ? 26 : 34);
  const plotHeight = zones.length > 0 ? (wide ? 168 : 170) : 0;
  const bottom = plotTop + plotHeight;
  const [read, setRead] = useState<number>();
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing whose parts can be moved; no element of HTML is one
    <svg
      className={styles.svg}
      width={width}
      height={bottom + 40}
      viewBox={`0 0 ${width} ${bottom + 40}`}
      role="group"
      aria-label={`${state.name}, from its marked end`}
    >
      <Patterns id={id} />
      <Grid {...{ x, top: top + 4, bottom, width }} />
      <SpanShade {...{ x, facts, top: 20, bottom, id }} />
      <Ribbon {...{ x, state, id, wide }} />
      <LaneRows
        lanes={lanes}
        top={top}
        {...{ x, id, wide, chosen, length }}
        onBegin={move.begin}
        onBy={move.by}
        onEnd={move.end}
      />
      {zones.length > 0 && (
        <StrengthPlot
          {...{ x, zones, needed, id, wide, width }}
          state={state}
          top={plotTop}
          height={plotHeight}
          read={read}
          onRead={setRead}
        />
      )}
    </svg>
  );
}

/** Moves the chosen entry along the webbing; a drag is one step of undo. */
function useMove(length: number) {
  const written = useWear((wear) => wear.history.present.record);
  const owner = useWear((wear) => wear.owner);
  const { edit, finish, look } = useWearActions();
  const start = useRef<{ readonly record: typeof written; readonly entry: number }>(undefined);
  return {
    begin(entry: number) {
      finish();
      start.current = { record: written, entry };
      look({ entry });
    },
    by(metres: number, end: GripEnd) {
      if (!start.current) return;
      const { record, entry } = start.current;
      const before = entriesOf(record, owner)[entry];
      if (!before) return;
      const after = movePlace(before, metres, length, end);
      edit(replaceEntry(record, owner, entry, after).record, "an entry moved along the webbing", `move ${entry}`);
    },
    end: finish,
  };
}

function Grid({ x, top, bottom, width }: { x: Scale; top: number; bottom: number; width: number }) {
  const ticks = roundTicks(x.from, x.to, Math.max(3, Math.floor((x.px(x.to) - x.px(x.from)) / 70)));
  return (
    <Unspoken>
      {ticks.map((tick) => (
        <g key={tick}>
          <path className={styles.rule} d={`M${x.px(tick)} ${top}V${bottom}`} />
          <text x={x.px(tick)} y={bottom + 16} textAnchor="middle" className={styles.soft}>
            {tick}
          </text>
        </g>
      ))}
      <path className={styles.axis} d={`M${x.px(x.from)} ${bottom}H${x.px(x.to)}`} />
      <text x={Math.min(x.px(x.from), width - 190)} y={bottom + 34} className={styles.soft}>
        metres from the marked end, unstretched
      </text>
    </Unspoken>
  );
}

/** What does not lie in the loaded span is shaded; the span's ends run through all lanes. */
function SpanShade({
  x,
  facts,
  top,
  bottom,
  id,
}: {
  x: Scale;
  facts: WebbingFacts;
  top: number;
  bottom: number;
  id: string;
}) {
  const { placement, to } = facts.state;
  if (!placement) return null;
  const [a, b] = [x.px(placement.from), x.px(placement.to)];
  const far = placement.markedEnd === "A" ? "A to B" : "B to A";
  const words = `${formatLength(placement.to - placement.from)} loaded, ${far}`;
  const [middle, half] = [(a + b) / 2, words.length * 3.6 + 8];

  return (
    <Unspoken>
      <rect
        x={x.px(0)}
        y={top + 16}
        width={Math.max(0, a - x.px(0))}
        height={bottom - top - 16}
        fill={`url(#${id}-off)`}
      />
      <rect x={b} y={top + 16} width={Math.max(0, x.px(to) - b)} height={bottom - top - 16} fill={`url(#${id}-off)`} />
      <path
        d={`M${a} ${top}V${bottom}M${b} ${top}V${bottom}`}
        stroke="var(--ink)"
        strokeWidth="1.25"
        strokeDasharray="1 3"
        fill="none"
        strokeLinecap="round"
      />
      <path
        d={`M${a} ${top - 8}H${middle - half}M${middle + half} ${top - 8}H${b}M${a + 6} ${top - 11}l-6 3 6 3M${b - 6} ${top - 11}l6 3-6 3M${a} ${top - 13}v10M${b} ${top - 13}v10`}
        stroke="var(--ink)"
        fill="none"
      />
      <text className={`${styles.serif} ${styles.halo}`} x={(a + b) / 2} y={top - 4} textAnchor="middle">
        {words}
      </text>
    </Unspoken>
  );
}

function captionOf({ state, zones, needed, stock }: WebbingFacts): string {
  const { placement } = state;
  const sun = "Sun and age are taken as equal over the whole length; the record knows no better.";
  if (!stock) return `What it holds is not drawn: choose what it is made of. ${sun}`;
  const worst = weakest(placement ? zonesWithin(zones, placement.from, placement.to) : zones);
  if (!worst) return sun;
  const where = `Weakest ${placement ? "inside the loaded span" : "place"}: ${formatLength((worst.from + worst.to) / 2)} from the marked end, ${zoneWords(worst)}.`;
  const need = needed
    ? ` Needed: ${formatForce(needed.needed)}, the largest load of this line in the last study, ${formatForce(needed.load)}, times ${needed.factor}${needed.old ? "; the rig has been changed since" : ""}.`
    : placement
      ? " What it must hold is not known here: the rig it hangs in is not the one in hand, or was not computed."
      : "";
  return `${where}${need} ${sun}`;
}
