import { useEffect, useId, useState } from "react";
import styles from "./Field.module.css";
import { Lines } from "./Lines.tsx";

interface Props {
  label: string;
  /** A date is typed or chosen in the browser's own picker: YYYY-MM-DD, or empty. */
  type?: "text" | "date";
  /** What the document holds, as it was typed. */
  value: string;
  /** Called with every change of the text; the document keeps what was typed, right or wrong. */
  onChange: (text: string) => void;
  /** Faults of this field, in words. */
  messages?: readonly string[];
  /** One line about what is meant, or how to type it. */
  hint?: string | undefined;
  /** Where the number comes from, shown quietly. */
  note?: string;
  onFocus?: () => void;
  onBlur?: () => void;
  /** Inside a sentence: the label is for screen readers only and the field is as wide as its text. */
  inline?: boolean;
  /** Words rather than a number: the field takes the whole width under its label. */
  wide?: boolean;
  /** What holds when nothing is typed. */
  placeholder?: string;
  disabled?: boolean;
  /** The value is nobody's yet: a broken edge, and these words for who cannot see it. */
  unconfirmed?: string | undefined;
}

/** A quantity or a word, typed the way people write it: "60 m", "2.5 kN", "540 lbf". */
export function TextField({
  label,
  type = "text",
  value,
  onChange,
  messages = [],
  hint,
  note,
  onFocus,
  onBlur,
  inline,
  wide,
  placeholder,
  disabled,
  unconfirmed,
}: Props) {
  const id = useId();
  const [draft, setDraft] = useState<string>();
  const wrong = messages.length > 0;
  const described = [unconfirmed && `${id}-mark`, wrong && `${id}-wrong`, hint && `${id}-hint`, note && `${id}-note`]
    .filter(Boolean)
    .join(" ");
  const shown = draft ?? value;
  // What is wrong with the field that is being typed in is in sight, also where little of the page is.
  useEffect(() => {
    if (wrong && document.activeElement?.id === id)
      document.getElementById(`${id}-wrong`)?.scrollIntoView({ block: "nearest" });
  }, [wrong, id]);
  return (
    <div className={inline ? styles.inline : wide ? styles.wide : styles.field}>
      <label htmlFor={id} className={inline ? "visually-hidden" : styles.label}>
        {label}
      </label>
      <input
        id={id}
        type={type}
        className={styles.input}
        value={shown}
        size={inline ? Math.max(shown.length, 3) : 10}
        disabled={disabled}
        placeholder={placeholder}
        spellCheck={false}
        autoComplete="off"
        data-unconfirmed={unconfirmed && ""}
        aria-invalid={wrong || undefined}
        aria-describedby={described || undefined}
        onFocus={() => {
          setDraft(value);
          onFocus?.();
        }}
        onBlur={() => {
          setDraft(undefined);
          onBlur?.();
        }}
        onChange={(event) => {
          setDraft(event.target.value);
          onChange(event.target.value);
        }}
      />
      {unconfirmed && (
        <span id={`${id}-mark`} className="visually-hidden">
          {unconfirmed}
        </span>
      )}
      {hint && (
        <p id={`${id}-hint`} className={inline ? "visually-hidden" : styles.hint}>
          {hint}
        </p>
      )}
      {note && (
        <p id={`${id}-note`} className={inline ? "visually-hidden" : styles.hint}>
          {note}
        </p>
      )}
      {wrong && <Lines id={`${id}-wrong`} className={styles.wrong} of={messages} />}
    </div>
  );
}
