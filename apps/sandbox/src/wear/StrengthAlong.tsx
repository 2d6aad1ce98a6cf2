import type { Scale } from "@secondline/figures";
import { readingLine, readingWords, strengthPlot } from "@secondline/figures/wear";
import { formatLength } from "@secondline/words/formats";
import { sayWear } from "@secondline/words/page/wear";
import { loadedZones, readOff, type WebbingFacts, weakest, zoneWords } from "@secondline/workbench/record";
import { useRef, useState } from "react";
import { Shapes } from "../picture/Shapes.tsx";
import styles from "./figures.module.css";
import { Grip } from "./Grip.tsx";

interface Props {
  x: Scale;
  facts: WebbingFacts;
  id: string;
  wide: boolean;
  width: number;
  top: number;
  height: number;
}

/** What the webbing holds along its length, with a line to read off what it holds at a place. */
export function StrengthAlong({ x, facts, id, wide, width, top, height }: Props) {
  const { zones, needed, state } = facts;
  const [read, setRead] = useState<number>();
  const start = useRef(0);
  const loaded = loadedZones(facts);
  const worst = weakest(loaded);
  const plot = {
    x,
    zones,
    loaded,
    worst,
    needed: needed?.needed,
    placement: state.placement,
    wide,
    width,
    top,
    height,
  };
  const reading = readOff(zones, x, worst, read);
  if (!reading) return null;
  const { place, here, min, max } = reading;
  return (
    <g>
      <Shapes of={strengthPlot(plot)} {...{ styles, id }} />
      <Grip
        label={sayWear("strengthReader.readOff")}
        text={`${formatLength(place)}: ${zoneWords(here)}`}
        value={place}
        step={0.1}
        bigStep={1}
        perUnit={x.perUnit}
        onBegin={() => {
          start.current = place;
        }}
        onBy={(by) => setRead(Math.min(Math.max(start.current + by, min), max))}
        {...{ min, max }}
      >
        <Shapes of={readingLine(plot, place, read !== undefined)} styles={styles} />
      </Grip>
      {read !== undefined && <Shapes of={[readingWords(plot, place, here)]} styles={styles} />}
    </g>
  );
}
