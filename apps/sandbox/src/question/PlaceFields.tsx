import { sayVerdict } from "@secondline/words/page/verdict";
import { readPlace, stepFor } from "@secondline/workbench";
import { useState } from "react";
import { RangeSlider } from "../design/RangeSlider.tsx";
import { TextField } from "../design/TextField.tsx";
import { quantity } from "../words.ts";
import styles from "./PlaceChoice.module.css";
import type { PlaceProps } from "./PlaceChoice.tsx";

/** A slider along the line, and a field for metres. */
export function PlaceFields({ label, at, span, ends, onChange }: PlaceProps) {
  const [typed, setTyped] = useState<string>();
  const fault = typed === undefined ? undefined : readPlace(typed, span, ends).fault;
  const metres = at * span;
  const margin = ends ? 0 : Math.min(1, span / 20);
  return (
    <>
      <div className={styles.line}>
        <span>A</span>
        <RangeSlider
          label={sayVerdict("placeFields.labelFromA", { label })}
          value={metres}
          min={margin}
          max={span - margin}
          step={stepFor(span)}
          say={quantity.length}
          onChange={(next) => {
            setTyped(undefined);
            onChange(next / span);
          }}
        />
        <span>B</span>
      </div>
      <TextField
        label={sayVerdict("placeFields.fromA")}
        value={typed ?? `${Number(metres.toFixed(2))} m`}
        messages={fault === undefined ? [] : [fault]}
        onChange={(text) => {
          setTyped(text);
          const read = readPlace(text, span, ends);
          if (read.at !== undefined) onChange(read.at);
        }}
        onBlur={() => fault === undefined && setTyped(undefined)}
      />
    </>
  );
}
