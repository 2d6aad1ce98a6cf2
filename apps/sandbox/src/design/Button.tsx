import { Button as Base } from "@base-ui/react/button";
import type { ComponentProps } from "react";
import styles from "./Button.module.css";
import { Icon, type IconName } from "./icons.tsx";

interface Props extends Omit<ComponentProps<"button">, "className" | "style"> {
  /** Filled: the one thing to do next. Plain: everything else. Quiet: no edge, inside text and bars. */
  tone?: "filled" | "plain" | "quiet";
  icon?: IconName;
  /** Shows the icon alone; `label` is still its name and its tooltip. */
  iconOnly?: boolean;
  label: string;
  /** The key that does the same, named in the tooltip. */
  keyName?: string | undefined;
  pressed?: boolean;
}

export function Button({ tone = "plain", icon, iconOnly = false, label, keyName, pressed, ...rest }: Props) {
  return (
    <Base
      {...rest}
      className={`${styles.button} ${styles[tone]} ${iconOnly ? styles.iconOnly : ""}`}
      aria-label={iconOnly ? label : undefined}
      aria-pressed={pressed}
      title={keyName ? `${label} (${keyName})` : iconOnly ? label : rest.title}
    >
      {icon && <Icon name={icon} />}
      {!iconOnly && <span>{label}</span>}
    </Base>
  );
}
