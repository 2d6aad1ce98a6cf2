import { Select } from "@base-ui/react/select";
import styles from "./Choice.module.css";
import { Icon } from "./icons.tsx";

interface Props<T extends string> {
  label: string;
  value: T;
  options: readonly { readonly value: T; readonly label: string }[];
  onChange: (value: T) => void;
  /** Inside a sentence: no label in sight, an underline for an edge. */
  inline?: boolean;
  /** In a bar: no label in sight, as wide as its text. */
  compact?: boolean;
  /** The value is nobody's yet: a broken edge, and these words for who cannot see it. */
  unconfirmed?: string | undefined;
  onFocus?: () => void;
}

/** One of a few named things. */
export function Choice<T extends string>({
  label,
  value,
  options,
  onChange,
  inline,
  compact,
  unconfirmed,
  onFocus,
}: Props<T>) {
  return (
    <div className={inline ? styles.inline : compact ? styles.compact : styles.field}>
      <Select.Root
        items={options as { value: T; label: string }[]}
        value={value}
        onValueChange={(next) => next !== null && onChange(next)}
      >
        {!inline && !compact && <Select.Label className={styles.label}>{label}</Select.Label>}
        <Select.Trigger
          className={styles.trigger}
          aria-label={inline || compact ? label : undefined}
          aria-description={unconfirmed}
          data-unconfirmed={unconfirmed && ""}
          onFocus={onFocus}
        >
          <Select.Value />
          <Select.Icon className={styles.icon}>
            <Icon name="down" size={14} />
          </Select.Icon>
        </Select.Trigger>
        <Select.Portal>
          <Select.Positioner className={styles.positioner} sideOffset={4} alignItemWithTrigger={false}>
            <Select.Popup className={styles.popup}>
              <Select.List>
                {options.map((option) => (
                  <Select.Item key={option.value} value={option.value} className={styles.item}>
                    <Select.ItemIndicator className={styles.mark}>●</Select.ItemIndicator>
                    <Select.ItemText className={styles.text}>{option.label}</Select.ItemText>
                  </Select.Item>
                ))}
              </Select.List>
            </Select.Popup>
          </Select.Positioner>
        </Select.Portal>
      </Select.Root>
    </div>
  );
}
