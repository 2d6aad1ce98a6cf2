import { Button as Base } from "@base-ui/react/button";
import buttonStyles from "../design/Button.module.css";
import styles from "./TimeStrip.module.css";

/** Drawings of our own for moving in time; the button's name says what they mean. */
const PATHS = {
  play: "M5 3l8 5-8 5z",
  pause: "M5.5 3v10M10.5 3v10",
  frameBack: "M10 4L6 8l4 4",
  frameOn: "M6 4l4 4-4 4",
  markBack: "M3 2v12M3 3h5l-1.5 2L8 7H3M14 11H8M10 9l-2 2 2 2",
  markOn: "M3 2v12M3 3h5l-1.5 2L8 7H3M8 11h6M12 9l2 2-2 2",
  loop: "M3 7V6a2 2 0 0 1 2-2h8M11 2l2 2-2 2M13 9v1a2 2 0 0 1-2 2H3M5 14l-2-2 2-2",
  measure: "M3 3v10M13 3v10M5 8h6M7 6L5 8l2 2M9 6l2 2-2 2",
  fit: "M2 5V3h3M14 5V3h-3M2 11v2h3M14 11v2h-3M5 8h6",
  closer: "M8 3v10M3 8h10",
  farther: "M3 8h10",
} as const;
export type TimeIcon = keyof typeof PATHS;

interface Props {
  readonly icon: TimeIcon;
  readonly name: string;
  /** The key that does the same. */
  readonly keyName?: string;
  readonly onPress: () => void;
  readonly pressed?: boolean;
  readonly disabled?: boolean;
  /** Shows the name beside the drawing. */
  readonly worded?: boolean;
  readonly tone?: "filled" | "plain" | "quiet";
}

export function TimeButton({ icon, name, keyName, onPress, pressed, disabled, worded, tone = "quiet" }: Props) {
  return (
    <Base
      className={`${buttonStyles.button} ${buttonStyles[tone]} ${worded ? "" : buttonStyles.iconOnly} ${styles.timeButton}`}
      aria-label={worded ? undefined : name}
      aria-pressed={pressed}
      title={keyName ? `${name} (${keyName})` : name}
      disabled={disabled ?? false}
      onClick={onPress}
    >
      <svg width={18} height={18} viewBox="0 0 16 16" fill="none" stroke="currentColor" aria-hidden="true">
        <path d={PATHS[icon]} strokeWidth={1.5} strokeLinecap="round" strokeLinejoin="round" />
      </svg>
      {worded && <span>{name}</span>}
    </Base>
  );
}
