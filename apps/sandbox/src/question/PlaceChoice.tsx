import { Popover } from "@base-ui/react/popover";
import { parseQuantity } from "@secondline/rig";
import { useState } from "react";
import { RangeSlider } from "../design/RangeSlider.tsx";
import { TextField } from "../design/TextField.tsx";
import { quantity } from "../words.ts";
import styles from "./PlaceChoice.module.css";

interface Props {
  /** What is at the place, e.g. "The walker's place". */
  label: string;
  /** Fraction of the line, 0 at anchor A [-]. */
  at: number;
  /** [m] */
  span: number;
  /** A cut may lie at an anchor itself; a walker stands some way from it. */
  ends: boolean;
  onChange: (at: number) => void;
}

/** Chooses a place on the line: typed in metres from anchor A, or slid along a drawing of the line. */
export function PlaceChoice({ label, at, span, ends, onChange }: Props) {
  const [typed, setTyped] = useState<string>();
  const fault = typed === undefined ? undefined : readPlace(typed, span, ends).fault;
  const metres = at * span;
  const margin = ends ? 0 : Math.min(1, span / 20);
  return (
    <Popover.Root onOpenChange={() => setTyped(undefined)}>
      <Popover.Trigger className={styles.trigger} aria-label={`${label}: ${placeWords(at, span)}`}>
        {placeWords(at, span)}
      </Popover.Trigger>
      <Popover.Portal>
        <Popover.Positioner sideOffset={6} align="start" className={styles.positioner}>
          <Popover.Popup className={styles.popup}>
            <Popover.Title className={styles.title}>{label}</Popover.Title>
            <div className={styles.line}>
              <span>A</span>
              <RangeSlider
                label={`${label}, from anchor A`}
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
              label="From anchor A"
              value={typed ?? `${Number(metres.toFixed(2))} m`}
              messages={fault === undefined ? [] : [fault]}
              onChange={(text) => {
                setTyped(text);
                const read = readPlace(text, span, ends);
                if (read.at !== undefined) onChange(read.at);
              }}
              onBlur={() => fault === undefined && setTyped(undefined)}
            />
          </Popover.Popup>
        </Popover.Positioner>
      </Popover.Portal>
    </Popover.Root>
  );
}

/** "anchor A", "the middle" or a length from anchor A. */
export function placeWords(at: number, span: number): string {
  if (at <= 0) return "anchor A";
  if (at >= 1) return "anchor B";
  if (Math.abs(at - 0.5) < 1e-6) return "the middle";
  return `${quantity.length(at * span)} from A`;
}

function readPlace(text: string, span: number, ends: boolean): { at?: number; fault?: string } {
  const read = parseQuantity(text, "length");
  if (!read.ok) return { fault: read.message };
  const at = read.value / span;
  const inside = ends ? at >= 0 && at <= 1 : at > 0 && at < 1;
  return inside ? { at } : { fault: `The line runs from 0 to ${quantity.length(span)}.` };
}

/** A slider step of about a hundredth of the span, in round numbers [m]. */
function stepFor(span: number): number {
  return span > 200 ? 1 : span > 40 ? 0.5 : 0.1;
}
