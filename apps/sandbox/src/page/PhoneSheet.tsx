import { sayPage } from "@secondline/words/page/page";
import type { PlaybackClock, SheetPlace } from "@secondline/workbench";
import { type KeyboardEvent, type PointerEvent, type ReactNode, useEffect, useRef, useState } from "react";
import { useClock } from "../clock/useClock.ts";
import { Icon } from "../design/icons.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import styles from "./PhoneSheet.module.css";

export const STOPS = ["low", "half", "full"] as const;
export type Stop = (typeof STOPS)[number];

interface Props {
  stop: Stop;
  onStop: (stop: Stop) => void;
  clock: PlaybackClock;
  pages: Readonly<Record<SheetPlace, ReactNode>>;
}
const PLACES: readonly { readonly place: SheetPlace; readonly label: string }[] = [
  { place: "verdict", label: sayPage("phoneSheet.verdict") },
  { place: "time", label: sayPage("phoneSheet.time") },
  { place: "rig", label: sayPage("phoneSheet.rig") },
];

/** The lower half of a narrow screen: three pages side by side, at three heights, over a bar within the thumb's reach. */
export function PhoneSheet({ stop, onStop, clock, pages }: Props) {
  const place = useSandbox((state) => state.session.place);
  const { look } = useActions();
  const strip = useRef<HTMLDivElement>(null);
  useFollowPlace(strip, place);
  return (
    <>
      <section className={`${styles.sheet} ${styles[stop]}`} aria-label={sayPage("phoneSheet.name")}>
        <Handle stop={stop} onStop={onStop} />
        <div
          ref={strip}
          className={styles.strip}
          onScroll={(event) => {
            const { scrollLeft, clientWidth } = event.currentTarget;
            const shown = PLACES[Math.round(scrollLeft / Math.max(clientWidth, 1))]?.place;
            const settled = Math.abs(scrollLeft / clientWidth - Math.round(scrollLeft / clientWidth)) < 0.02;
            if (shown && settled && shown !== place) look({ place: shown });
          }}
        >
          {PLACES.map(({ place: page, label }) => (
            <section key={page} className={styles.page} aria-label={label} inert={page !== place}>
              {pages[page]}
            </section>
          ))}
        </div>
        {(place !== "verdict" || stop === "low") && (
          <button
            type="button"
            className={styles.caution}
            onClick={() => {
              look({ place: "verdict" });
              if (stop === "low") onStop("half");
            }}
          >
            {sayPage("phoneSheet.caution")} <u>{sayPage("phoneSheet.allCautions")}</u>
          </button>
        )}
      </section>
      <nav className={styles.bar} aria-label={sayPage("phoneSheet.pages")}>
        {PLACES.map(({ place: page, label }) => (
          <button
            key={page}
            type="button"
            className={styles.tab}
            aria-current={page === place ? "page" : undefined}
            onClick={() => {
              look({ place: page });
              if (stop === "low") onStop("half");
            }}
          >
            {label}
          </button>
        ))}
        <PlayButton clock={clock} />
      </nav>
    </>
  );
}

function PlayButton({ clock }: { clock: PlaybackClock }) {
  const playing = useClock(clock, (state) => state.playing);
  return (
    <button
      type="button"
      className={styles.play}
      aria-label={playing ? sayPage("phoneSheet.pause") : sayPage("phoneSheet.play")}
      onClick={clock.toggle}
    >
      <Icon name={playing ? "pause" : "play"} size={22} />
    </button>
  );
}

/** Brings a page into view when it is chosen elsewhere. */
function useFollowPlace(strip: React.RefObject<HTMLDivElement | null>, place: SheetPlace) {
  useEffect(() => {
    const element = strip.current;
    if (!element) return;
    const left = PLACES.findIndex((entry) => entry.place === place) * element.clientWidth;
    if (Math.abs(element.scrollLeft - left) > 2) element.scrollTo({ left });
  }, [strip, place]);
}

/** Dragged up and down, pressed to go to the next height, or moved with the arrow keys. */
function Handle({ stop, onStop }: { stop: Stop; onStop: (stop: Stop) => void }) {
  const from = useRef<number>(undefined);
  const moved = useRef(false);
  const [dragged, setDragged] = useState(0);
  const at = STOPS.indexOf(stop);
  const go = (by: number) => onStop(STOPS[Math.min(Math.max(at + by, 0), STOPS.length - 1)]!);
  const end = () => {
    if (from.current === undefined) return;
    from.current = undefined;
    moved.current = Math.abs(dragged) > 12;
    if (dragged < -40) go(dragged < -320 ? 2 : 1);
    if (dragged > 40) go(dragged > 320 ? -2 : -1);
    setDragged(0);
  };
  return (
    <button
      type="button"
      className={styles.handle}
      aria-label={sayPage(`phoneSheet.height.${stop}`)}
      onPointerDown={(event: PointerEvent) => {
        from.current = event.clientY;
        moved.current = false;
        event.currentTarget.setPointerCapture(event.pointerId);
      }}
      onPointerMove={(event: PointerEvent) => from.current !== undefined && setDragged(event.clientY - from.current)}
      onPointerUp={end}
      onPointerCancel={end}
      onClick={() => {
        if (!moved.current) onStop(STOPS[(at + 1) % STOPS.length]!);
      }}
      onKeyDown={(event: KeyboardEvent) => {
        if (event.key === "ArrowUp") go(1);
        if (event.key === "ArrowDown") go(-1);
      }}
    >
      <span className={styles.grip} style={{ translate: `0 ${Math.min(Math.max(dragged / 8, -10), 10)}px` }} />
    </button>
  );
}
