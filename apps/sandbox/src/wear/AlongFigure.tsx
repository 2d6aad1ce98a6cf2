import { scaleOf } from "@secondline/figures";
import { formatLength } from "@secondline/words/formats";
import { sayWear } from "@secondline/words/page/wear";
import { entriesOf, placeOf } from "@secondline/workbench";
import {
  basisKinds,
  lanesHeight,
  lanesOf,
  layLanes,
  type WebbingFacts,
  weakest,
  zonesWithin,
  zoneWords,
} from "@secondline/workbench/record";
import { type KeyboardEvent, useEffect, useId, useMemo, useRef, useState } from "react";
import { useFrameSize } from "../time/useFrameSize.ts";
import { useWear } from "../wearInHand/useWear.ts";
import { quantity } from "../words.ts";
import { Grid, SpanShade } from "./AlongPaper.tsx";
import { AlongTools } from "./AlongTools.tsx";
import { type AlongTarget, listenAlong } from "./alongGesture.ts";
import styles from "./figures.module.css";
import { LaneRows } from "./LaneRows.tsx";
import { Patterns } from "./Patterns.tsx";
import { RIBBON_HEIGHT, Ribbon } from "./Ribbon.tsx";
import { StrengthPlot } from "./StrengthPlot.tsx";
import { type Along, useAlong } from "./useAlong.ts";
import { useMovedEntry } from "./useMovedEntry.ts";

/** The webbing from its marked end: what lies where on it, and below on the same scale what it still holds. */
export function AlongFigure({ facts, wide }: { facts: WebbingFacts; wide: boolean }) {
  const { ref, size } = useFrameSize<HTMLElement>();
  const id = useId().replaceAll(":", "");
  const written = useWear((wear) => wear.work.record);
  const owner = useWear((wear) => wear.owner);
  const entries = entriesOf(written, owner);
  const along = useAlong(Math.max(facts.state.to, ...entries.flatMap((entry) => placeOf(entry)?.to ?? [])));
  return (
    <figure className={styles.figure} ref={ref} data-along onKeyDown={(event) => onKey(event, along)}>
      <AlongTools along={along} state={facts.state} />
      {size.width > 0 && <Drawing {...{ facts, wide, id, along, entries }} width={size.width} />}
      <figcaption className={styles.caption}>{captionOf(facts)}</figcaption>
    </figure>
  );
}

/** The same keys as along time. */
function onKey(event: KeyboardEvent, along: Along): void {
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  if (event.key === "+" || event.key === "=") along.zoom(2);
  else if (event.key === "-") along.zoom(0.5);
  else if (event.key === "0") along.reset();
  else return;
  event.preventDefault();
}

interface DrawingProps {
  facts: WebbingFacts;
  wide: boolean;
  id: string;
  along: Along;
  entries: ReturnType<typeof entriesOf>;
  width: number;
}

function Drawing({ facts, wide, id, along, entries, width }: DrawingProps) {
  const { state, zones, needed } = facts;
  const on = useWear((wear) => wear.on);
  const chosen = useWear((wear) => wear.entry);
  const { from, to } = along.sight;
  const x = useMemo(() => scaleOf(from, to, wide ? 112 : 34, width - (wide ? 92 : 12)), [from, to, wide, width]);
  const lanes = layLanes(lanesOf(entries, state, on), x, width, wide);
  const move = useMovedEntry(along);
  const svg = useGestures({ along, left: x.px(from), width: x.px(to) - x.px(from) });
  const top = RIBBON_HEIGHT;
  const plotTop = top + lanesHeight(lanes) + (wide ? 26 : 34);
  const plotHeight = zones.length > 0 ? (wide ? 168 : 170) : 0;
  const bottom = plotTop + plotHeight;
  const [read, setRead] = useState<number>();
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing whose parts can be moved; no element of HTML is one
    <svg
      ref={svg}
      className={`${styles.svg} ${styles.along}`}
      width={width}
      height={bottom + 40}
      viewBox={`0 0 ${width} ${bottom + 40}`}
      role="group"
      aria-label={sayWear("alongFigure.markedEnd", { name: state.name })}
    >
      <Patterns id={id} />
      <clipPath id={`${id}-sight`}>
        <rect x={x.px(from) - 1} y={0} width={x.px(to) - x.px(from) + 2} height={bottom + 2} />
      </clipPath>
      <Grid {...{ x, top: top + 4, bottom, width }} />
      <SpanShade {...{ x, state, top: 20, bottom, id }} />
      <Ribbon {...{ x, state, id, wide }} />
      <LaneRows
        lanes={lanes}
        top={top}
        {...{ x, id, wide, chosen }}
        length={along.length}
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

function useGestures({ along, left, width }: { along: Along; left: number; width: number }) {
  const svg = useRef<SVGSVGElement>(null);
  const target: AlongTarget = { range: along.sight, whole: along.length, onRange: along.set, left, width };
  const latest = useRef(target);
  latest.current = target;
  useEffect(() => listenAlong(svg.current!, () => latest.current), []);
  return svg;
}

function captionOf({ state, zones, needed, stock }: WebbingFacts): string {
  const { placement } = state;
  const sun = sayWear("alongFigure.sunIsEqual");
  if (!stock) return sayWear("alongFigure.materialMissing", { sun });
  const worst = weakest(placement ? zonesWithin(zones, placement.from, placement.to) : zones);
  if (!worst) return sun;
  const where = sayWear("alongFigure.weakestAt", {
    where: placement ? sayWear("alongFigure.insideSpan") : sayWear("alongFigure.place"),
    place: formatLength((worst.from + worst.to) / 2),
    zone: zoneWords(worst),
    bases: basisKinds(worst),
  });
  const need = needed
    ? sayWear("alongFigure.needed", {
        needed: quantity.load(needed.needed),
        demand: quantity.load(needed.demand),
        required: quantity.required(needed.required),
      })
    : placement
      ? sayWear("alongFigure.needUnknown")
      : "";
  return `${where}${need} ${sun}`;
}
