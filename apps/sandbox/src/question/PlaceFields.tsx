import { parseQuantity } from "@secondline/rig";
import { sayVerdict } from "@secondline/words/page/verdict";
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

function readPlace(text: string, span: number, ends: boolean): { at?: number; fault?: string } {
  const read = parseQuantity(text, "length");
  if (!read.ok) return { fault: read.message };
  const at = read.value / span;
  const inside = ends ? at >= 0 && at <= 1 : at > 0 && at < 1;
  return inside ? { at } : { fault: sayVerdict("placeFields.outside", { length: quantity.length(span) }) };
}

/** A slider step of about a hundredth of the span, in round numbers [m]. */
function stepFor(span: number): number {
  return span > 200 ? 1 : span > 40 ? 0.5 : 0.1;
}
