import type { Plot } from "@secondline/figures";
import { useFrameSize } from "../time/useFrameSize.ts";
import { PlotDrawing } from "./PlotDrawing.tsx";

/** A plot as wide as its place; undefined: there is none yet. */
export function PlotInPlace({ plot, className }: { plot: Plot | undefined; className?: string | undefined }) {
  const { ref, size } = useFrameSize<HTMLDivElement>();
  return (
    <div ref={ref} className={className}>
      {plot && size.width > 0 && <PlotDrawing plot={plot} width={size.width} className={undefined} />}
    </div>
  );
}
