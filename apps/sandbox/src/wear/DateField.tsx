import { useId } from "react";
import field from "../design/Field.module.css";

interface Props {
  label: string;
  /** YYYY-MM-DD, or empty. */
  value: string;
  onChange: (iso: string) => void;
  onBlur?: () => void;
  messages?: readonly string[];
  hint?: string;
}

/** A calendar date, by the browser's own picker or typed. */
export function DateField({ label, value, onChange, onBlur, messages = [], hint }: Props) {
  const id = useId();
  const wrong = messages.length > 0;
  const described = [wrong && `${id}-wrong`, hint && `${id}-hint`].filter(Boolean).join(" ");
  return (
    <div className={field.field}>
      <label htmlFor={id} className={field.label}>
        {label}
      </label>
      <input
        id={id}
        type="date"
        className={field.input}
        value={value}
        aria-invalid={wrong || undefined}
        aria-describedby={described || undefined}
        onChange={(event) => onChange(event.target.value)}
        onBlur={onBlur}
      />
      {hint && (
        <p id={`${id}-hint`} className={field.hint}>
          {hint}
        </p>
      )}
      {wrong && (
        <ul id={`${id}-wrong`} className={field.wrong}>
          {messages.map((message) => (
            <li key={message}>{message}</li>
          ))}
        </ul>
      )}
    </div>
  );
}
