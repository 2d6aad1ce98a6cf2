import { scaleOf } from "@secondline/figures";
import { alongPaper, RIBBON_HEIGHT, WEAR_TILES } from "@secondline/figures/wear";
import { sayWear } from "@secondline/words/page/wear";
import { entriesOf, placeOf } from "@secondline/workbench";
import { alongCaption, lanesHeight, lanesOf, layLanes, type WebbingFacts } from "@secondline/workbench/record";
import { type KeyboardEvent, useEffect, useId, useMemo, useRef } from "react";
import { Shapes, Tiles } from "../picture/Shapes.tsx";
import { useFrameSize } from "../time/useFrameSize.ts";
import { useWear } from "../wearInHand/useWear.ts";
import { AlongTools } from "./AlongTools.tsx";
import { type AlongTarget, listenAlong } from "./alongGesture.ts";
import styles from "./figures.module.css";
import { LaneRows } from "./LaneRows.tsx";
import { StrengthAlong } from "./StrengthAlong.tsx";
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
      <figcaption className={styles.caption}>{alongCaption(facts)}</figcaption>
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
  const { state, zones } = facts;
  const on = useWear((wear) => wear.on);
  const chosen = useWear((wear) => wear.entry);
  const { from, to } = along.sight;
  const x = useMemo(() => scaleOf(from, to, wide ? 112 : 34, width - (wide ? 92 : 12)), [from, to, wide, width]);
  const lanes = layLanes(lanesOf(entries, state, on), x, width, wide);
  const move = useMovedEntry(along);
  const svg = useGestures({ along, left: x.px(from), width: x.px(to) - x.px(from) });
  const plotTop = RIBBON_HEIGHT + lanesHeight(lanes) + (wide ? 26 : 34);
  const plotHeight = zones.length > 0 ? (wide ? 168 : 170) : 0;
  const bottom = plotTop + plotHeight;
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
      <Tiles of={WEAR_TILES} id={id} />
      <clipPath id={`${id}-sight`}>
        <rect x={x.px(from) - 1} y={0} width={x.px(to) - x.px(from) + 2} height={bottom + 2} />
      </clipPath>
      <Shapes of={alongPaper({ x, state, bottom, width, wide })} {...{ styles, id }} />
      <LaneRows
        lanes={lanes}
        top={RIBBON_HEIGHT}
        {...{ x, id, wide, chosen }}
        length={along.length}
        onBegin={move.begin}
        onBy={move.by}
        onEnd={move.end}
      />
      {zones.length > 0 && <StrengthAlong {...{ x, facts, id, wide, width }} top={plotTop} height={plotHeight} />}
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
