import { frameOf, type Plot } from "@secondline/figures";
import { type ReactNode, useMemo } from "react";
import { measure } from "../picture/encode.ts";
import { PlotDrawing } from "../picture/PlotDrawing.tsx";
import { useFrameSize } from "../time/useFrameSize.ts";
import styles from "./howFar.module.css";

interface Props {
  plot: Plot;
  /** Where values can be opened: their place in the plot, and what opens them. */
  spots: readonly {
    readonly key: string;
    readonly at: readonly [number, number];
    readonly label: string;
    readonly pressed: boolean;
    readonly open: () => void;
  }[];
  caption: ReactNode;
}

/** The plot of a sweep as it is printed, with a button over every value. */
export function SweepFigure({ plot, spots, caption }: Props) {
  const { ref, size } = useFrameSize<HTMLDivElement>();
  return (
    <figure className={styles.figure}>
      <div ref={ref} className={styles.drawing}>
        {size.width > 0 && <Drawing plot={plot} width={size.width} spots={spots} />}
      </div>
      <figcaption className={styles.note}>{caption}</figcaption>
    </figure>
  );
}

function Drawing({ plot, width, spots }: { plot: Plot; width: number; spots: Props["spots"] }) {
  const frame = useMemo(() => frameOf(plot, width, canvasInk()), [plot, width]);
  return (
    <>
      <PlotDrawing {...{ plot, width }} className={styles.plot} />
      {spots.map(({ key, at, label, pressed, open }) => (
        <button
          key={key}
          type="button"
          className={styles.spot}
          aria-label={label}
          title={label}
          aria-pressed={pressed}
          style={{ left: frame.x.px(at[0]), top: frame.y.px(at[1]) }}
          onClick={open}
        />
      ))}
    </>
  );
}

/** What measures words as the plot does. */
function canvasInk(): { font: string; measureText: (text: string) => { readonly width: number } } {
  const ink = {
    font: "",
    measureText: (text: string) => ({ width: measure(text, ink.font) }),
  };
  return ink;
}
