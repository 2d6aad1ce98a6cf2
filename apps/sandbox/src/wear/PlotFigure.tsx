import { type Plot, plotSvg } from "@secondline/figures";
import { useId, useLayoutEffect, useRef } from "react";
import { measure } from "../picture/encode.ts";
import { useFrameSize, usePalette } from "../time/index.ts";
import styles from "./figures.module.css";
import { SavePlots } from "./SavePlots.tsx";

/** A plot as it is saved: drawn by the same description, with how it is to be read below it. */
export function PlotFigure({ plot }: { plot: Plot }) {
  const { ref, size } = useFrameSize<HTMLElement>();
  return (
    <figure className={styles.figure} ref={ref}>
      {size.width > 0 && <Drawing plot={plot} width={size.width} />}
      <figcaption className={styles.caption}>
        {plot.notes.join(" ")}
        <SavePlots plots={[plot]} of={plot.title} />
      </figcaption>
    </figure>
  );
}

function Drawing({ plot, width }: { plot: Plot; width: number }) {
  const holder = useRef<HTMLDivElement>(null);
  const palette = usePalette();
  const name = useId().replace(/\W/g, "");
  useLayoutEffect(() => {
    const svg = new DOMParser().parseFromString(plotSvg(plot, width, palette, measure, name), "image/svg+xml");
    const drawing = document.importNode(svg.documentElement, true);
    drawing.setAttribute("class", styles.plot ?? "");
    holder.current?.replaceChildren(drawing);
  }, [plot, width, palette, name]);
  return <div ref={holder} />;
}
