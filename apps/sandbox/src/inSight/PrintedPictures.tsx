import type { PlaybackClock } from "@secondline/workbench";
import { useEffect, useState } from "react";
import { flushSync } from "react-dom";
import { useContextOrThrow } from "../state/useSandbox.ts";
import styles from "./ScenePlace.module.css";

/** On paper, drawings made for it take the place of the live scene and the time strip. */
export function PrintedPictures({ clock }: { clock: PlaybackClock }) {
  const { store, recordings } = useContextOrThrow();
  const [pictures, setPictures] = useState<readonly string[]>([]);
  useEffect(() => {
    let draw: typeof import("../files/printPictures.ts").printPictures | undefined;
    // The browser waits for nothing once it prints: the code must be here before.
    const fetching = setTimeout(async () => {
      draw = (await import("../files/printPictures.ts").catch(() => undefined))?.printPictures;
    }, FETCH_DELAY_MS);
    const before = () => {
      const { time } = clock.getSnapshot();
      const drawn = draw?.({ state: store.getState(), recordings, date: new Date() }, time);
      if (drawn) flushSync(() => setPictures(drawn));
    };
    const after = () => setPictures([]);
    addEventListener("beforeprint", before);
    addEventListener("afterprint", after);
    return () => {
      clearTimeout(fetching);
      removeEventListener("beforeprint", before);
      removeEventListener("afterprint", after);
    };
  }, [store, recordings, clock]);
  return (
    <div className={styles.printed}>
      {pictures.map((picture) => (
        <img key={picture.length} src={`data:image/svg+xml;charset=utf-8,${encodeURIComponent(picture)}`} alt="" />
      ))}
    </div>
  );
}

/** Long enough for the page to be in use first [ms]. */
const FETCH_DELAY_MS = 3000;
