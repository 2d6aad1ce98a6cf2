import { Radio } from "@base-ui/react/radio";
import { RadioGroup } from "@base-ui/react/radio-group";
import {
  type Guess,
  type Lesson,
  lessonResultWords,
  readGuess,
  type SliderScale,
  saidWords,
  say,
  type Try,
} from "@secondline/workbench/lessons";
import { useId, useState } from "react";
import { Button } from "../design/Button.tsx";
import { RangeSlider } from "../design/RangeSlider.tsx";
import styles from "./PredictionForm.module.css";

const REASONS = [1, 2, 3] as const;

interface Props {
  lesson: Lesson;
  /** What was given of the same kind, in the lesson's unit: marked under the slider. */
  given: number | undefined;
  /** The last try, from which the slider starts. */
  earlier: Try | undefined;
  onRun: (guess: Guess) => void;
}

/** A number and a reason, asked for before anything is shown. */
export function PredictionForm({ lesson, given, earlier, onRun }: Props) {
  const { id, scale } = lesson;
  const [predicted, setPredicted] = useState<number>();
  const [reason, setReason] = useState<1 | 2 | 3>();
  const [ownReason, setOwnReason] = useState("");
  const [missing, setMissing] = useState<string>();
  const own = useId();
  const value = predicted ?? earlier?.predicted ?? scale.from;
  const words = saidWords(value, scale);

  function run(): void {
    const read = readGuess(predicted, reason, ownReason);
    if (read.ok) onRun(read.guess);
    else setMissing(read.missing);
  }

  return (
    <form
      className={styles.form}
      onSubmit={(event) => {
        event.preventDefault();
        run();
      }}
    >
      <div className={styles.number}>
        <span className={styles.label}>{say(`${id}.slider`)}</span>
        <output className={styles.value} data-set={predicted !== undefined}>
          {predicted === undefined ? "?" : words}
        </output>
        <div className={styles.slider}>
          <RangeSlider
            label={say(`${id}.slider`)}
            value={value}
            min={scale.from}
            max={scale.to}
            step={scale.step}
            say={(at) => saidWords(at, scale)}
            onChange={(next) => {
              setPredicted(Number(next.toFixed(6)));
              setMissing(undefined);
            }}
          />
          {given !== undefined && <GivenMark given={given} scale={scale} />}
          <span className={styles.end}>{saidWords(scale.from, scale)}</span>
          <span className={styles.end}>{saidWords(scale.to, scale)}</span>
        </div>
      </div>
      <RadioGroup
        className={styles.reasons}
        aria-label={say("lesson.reason")}
        value={reason ?? null}
        onValueChange={(next) => {
          setReason(next as 1 | 2 | 3);
          setMissing(undefined);
        }}
      >
        <span className={styles.label} aria-hidden="true">
          {say("lesson.reason")}
        </span>
        {REASONS.map((number) => (
          // biome-ignore lint/a11y/noLabelWithoutControl: the radio inside is the control
          <label key={number} className={styles.reason}>
            <Radio.Root value={number} className={styles.radio}>
              <Radio.Indicator className={styles.dot} />
            </Radio.Root>
            <span>{say(`${id}.reason${number}`)}</span>
          </label>
        ))}
      </RadioGroup>
      <div className={styles.own}>
        <label htmlFor={own} className={styles.label}>
          {say("lesson.ownReason")}
        </label>
        <textarea
          id={own}
          className={styles.text}
          rows={2}
          maxLength={400}
          value={ownReason}
          onChange={(event) => {
            setOwnReason(event.target.value);
            setMissing(undefined);
          }}
        />
      </div>
      <div className={styles.go}>
        <Button tone="filled" icon="play" label={say("lesson.run")} type="submit" />
        <p role="alert" className={styles.missing}>
          {missing}
        </p>
      </div>
    </form>
  );
}

/** Where the given value lies on the slider, so that a prediction can be set against it. */
function GivenMark({ given, scale }: { given: number; scale: SliderScale }) {
  const share = (given - scale.from) / (scale.to - scale.from);
  // The words stand on the side that has more room, clear of the ends' own.
  const side = share < 0.5 ? { left: `${share * 100}%` } : { right: `${(1 - share) * 100}%` };
  return (
    <div className={styles.givenLine} aria-hidden="true">
      <span className={share < 0.5 ? styles.givenLeft : styles.givenRight} style={side}>
        {say("slider.given", { value: lessonResultWords(given, scale) })}
      </span>
    </div>
  );
}
