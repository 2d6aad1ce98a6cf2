import { Checkbox } from "@base-ui/react/checkbox";
import styles from "./Tick.module.css";

interface Props {
  label: string;
  checked: boolean;
  onChange: (checked: boolean) => void;
  hint?: string;
}

/** Yes or no. */
export function Tick({ label, checked, onChange, hint }: Props) {
  return (
    // biome-ignore lint/a11y/noLabelWithoutControl: the checkbox inside is the control
    <label className={styles.tick} title={hint}>
      <Checkbox.Root className={styles.box} checked={checked} onCheckedChange={onChange}>
        <Checkbox.Indicator className={styles.mark}>
          <svg width="12" height="12" viewBox="0 0 12 12" aria-hidden="true">
            <path d="M2 6.5 5 9.5 10 3" fill="none" stroke="currentColor" strokeWidth="2" />
          </svg>
        </Checkbox.Indicator>
      </Checkbox.Root>
      {label}
    </label>
  );
}
