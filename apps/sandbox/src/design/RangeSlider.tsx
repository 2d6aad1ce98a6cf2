import { Slider } from "@base-ui/react/slider";
import styles from "./RangeSlider.module.css";

interface Props {
  label: string;
  value: number;
  min: number;
  max: number;
  step: number;
  /** The value in words, with its unit. */
  say: (value: number) => string;
  onChange: (value: number) => void;
  /** The end of a drag or a key. */
  onCommit?: (value: number) => void;
}

/** A slider for a quantity with a natural range; a field beside it takes values outside of the range. */
export function RangeSlider({ label, value, min, max, step, say, onChange, onCommit }: Props) {
  const shown = Math.min(Math.max(value, min), max);
  return (
    <Slider.Root
      value={shown}
      min={min}
      max={max}
      step={step}
      onValueChange={(next) => onChange(next as number)}
      onValueCommitted={(next) => onCommit?.(next as number)}
    >
      <Slider.Control className={styles.control}>
        <Slider.Track className={styles.track}>
          <Slider.Indicator className={styles.filled} />
          <Slider.Thumb className={styles.thumb} aria-label={label} getAriaValueText={(_text, number) => say(number)} />
        </Slider.Track>
      </Slider.Control>
    </Slider.Root>
  );
}
