import { type Plot, plotSvg } from "@secondline/figures";
import { useId, useLayoutEffect, useRef } from "react";
import { usePalette } from "../time/usePalette.ts";
import { measure } from "./encode.ts";

/** A plot as it is printed, so wide [px]. */
export function PlotDrawing({ plot, width, className }: { plot: Plot; width: number; className: string | undefined }) {
  const holder = useRef<HTMLDivElement>(null);
  const palette = usePalette();
  const name = useId().replace(/\W/g, "");
  useLayoutEffect(() => {
    const svg = new DOMParser().parseFromString(plotSvg(plot, width, palette, measure, name), "image/svg+xml");
    holder.current?.replaceChildren(document.importNode(svg.documentElement, true));
  }, [plot, width, palette, name]);
  return <div ref={holder} className={className} />;
}
