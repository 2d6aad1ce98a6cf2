import type { Plot } from "@secondline/figures";
import { PlotInPlace } from "../picture/PlotInPlace.tsx";
import styles from "./figures.module.css";
import { SavePlots } from "./SavePlots.tsx";

/** A plot as it is saved: drawn by the same description, with how it is to be read below it. */
export function PlotFigure({ plot }: { plot: Plot }) {
  return (
    <figure className={styles.figure}>
      <PlotInPlace plot={plot} className={styles.drawing} />
      <figcaption className={styles.caption}>
        {plot.notes.join(" ")}
        <SavePlots plots={[plot]} of={plot.title} />
      </figcaption>
    </figure>
  );
}
