import type { Plot } from "@secondline/figures";
import { PlotDrawing } from "../picture/PlotDrawing.tsx";
import { useFrameSize } from "../time/useFrameSize.ts";
import styles from "./figures.module.css";
import { SavePlots } from "./SavePlots.tsx";

/** A plot as it is saved: drawn by the same description, with how it is to be read below it. */
export function PlotFigure({ plot }: { plot: Plot }) {
  const { ref, size } = useFrameSize<HTMLElement>();
  return (
    <figure className={styles.figure} ref={ref}>
      {size.width > 0 && <PlotDrawing plot={plot} width={size.width} className={styles.drawing} />}
      <figcaption className={styles.caption}>
        {plot.notes.join(" ")}
        <SavePlots plots={[plot]} of={plot.title} />
      </figcaption>
    </figure>
  );
}
