import { Menu } from "@base-ui/react/menu";
import styles from "./ActionMenu.module.css";
import buttonStyles from "./Button.module.css";
import { Icon, type IconName } from "./icons.tsx";

export type MenuEntry =
  | { readonly label: string; readonly onSelect: () => void; readonly detail?: string; readonly disabled?: boolean }
  | "rule";

interface Props {
  label: string;
  icon?: IconName;
  iconOnly?: boolean;
  entries: readonly MenuEntry[];
}

export function ActionMenu({ label, icon, iconOnly = false, entries }: Props) {
  return (
    <Menu.Root>
      <Menu.Trigger
        className={`${buttonStyles.button} ${buttonStyles.quiet} ${iconOnly ? buttonStyles.iconOnly : ""}`}
        aria-label={iconOnly ? label : undefined}
      >
        {icon && <Icon name={icon} />}
        {!iconOnly && <span>{label}</span>}
        {!iconOnly && <Icon name="down" size={12} />}
      </Menu.Trigger>
      <Menu.Portal>
        <Menu.Positioner className={styles.positioner} sideOffset={4} align="end">
          <Menu.Popup className={styles.popup}>
            {entries.map((entry, index) =>
              entry === "rule" ? (
                // biome-ignore lint/suspicious/noArrayIndexKey: rules have no other identity and never move
                <Menu.Separator key={`rule-${index}`} className={styles.rule} />
              ) : (
                <Menu.Item
                  key={entry.label}
                  className={styles.item}
                  disabled={entry.disabled ?? false}
                  onClick={entry.onSelect}
                >
                  <span>{entry.label}</span>
                  {entry.detail && <span className={styles.detail}>{entry.detail}</span>}
                </Menu.Item>
              ),
            )}
          </Menu.Popup>
        </Menu.Positioner>
      </Menu.Portal>
    </Menu.Root>
  );
}
