import { type RangeEnd, type TimeRange, typedRange } from "@secondline/figures/time";
import { sayTime } from "@secondline/words/page/time";
import { useState } from "react";
import { TextField } from "../design/TextField.tsx";
import { quantity } from "../words.ts";
import styles from "./NumbersPanel.module.css";

interface Props {
  readonly range: TimeRange;
  readonly duration: number;
  /** Decimals that matter at this zoom. */
  readonly digits: number;
  readonly onRange: (range: TimeRange) => void;
}

/** The visible range in figures, to be typed. */
export function RangeFields({ range, duration, digits, onRange }: Props) {
  const [fault, setFault] = useState<{ readonly end: RangeEnd; readonly message: string } | null>(null);
  const field = (end: RangeEnd, label: string) => (
    <TextField
      inline
      label={label}
      value={range[end].toFixed(digits)}
      messages={fault?.end === end ? [fault.message] : []}
      onChange={(text) => {
        const typed = typedRange(range, end, text, duration);
        setFault(typed.ok ? null : { end, message: typed.message });
        if (typed.ok) onRange(typed.range);
      }}
      onBlur={() => setFault(null)}
    />
  );
  return (
    <div className={styles.rangeFields}>
      {sayTime("rangeFields.seconds")} {field("from", sayTime("rangeFields.from"))} {sayTime("rangeFields.to")}{" "}
      {field("to", sayTime("rangeFields.toField"))}{" "}
      {sayTime("rangeFields.of", { duration: quantity.rounded(duration, 2, "nearest") })}
    </div>
  );
}
