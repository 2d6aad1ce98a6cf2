import type { ReactNode } from "react";
import styles from "./wear.module.css";

interface Props {
  of: readonly { readonly key: string; readonly said: ReactNode }[];
  label?: string;
}

/** What to look out for, each behind a mark. */
export function Flags({ of, label }: Props) {
  return (
    <ul className={styles.flags} aria-label={label}>
      {of.map(({ key, said }) => (
        <li key={key}>
          <span aria-hidden="true" className={styles.flagMark}>
            ▲
          </span>
          <span>{said}</span>
        </li>
      ))}
    </ul>
  );
}
