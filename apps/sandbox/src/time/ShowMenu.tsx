import { Menu } from "@base-ui/react/menu";
import type { DrawnSamples, TraceId, TraceStyle } from "@secondline/figures/time";
import { capital } from "@secondline/words";
import { sayTime } from "@secondline/words/page/time";
import buttonStyles from "../design/Button.module.css";
import { Icon } from "../design/icons.tsx";
import styles from "./TimeMenu.module.css";

interface Props {
  readonly traces: readonly TraceStyle[];
  readonly shown: ReadonlySet<TraceId>;
  readonly onShown: (id: TraceId, shown: boolean) => void;
  readonly drawn: DrawnSamples;
  readonly onDrawn: (drawn: DrawnSamples) => void;
}

const READINGS: readonly { readonly value: DrawnSamples; readonly label: string; readonly detail: string }[] = [
  { value: "both", label: sayTime("showMenu.filteredRawBehind"), detail: sayTime("showMenu.filteredHint") },
  { value: "filtered", label: sayTime("showMenu.filteredOnly"), detail: sayTime("showMenu.filteredHint") },
  { value: "raw", label: sayTime("showMenu.rawOnly"), detail: sayTime("showMenu.rawHint") },
];

/** Which traces are drawn, and how they are read. */
export function ShowMenu({ traces, shown, onShown, drawn, onDrawn }: Props) {
  return (
    <Menu.Root>
      <Menu.Trigger className={`${buttonStyles.button} ${buttonStyles.quiet}`}>
        <span>{sayTime("showMenu.show")}</span>
        <Icon name="down" size={12} />
      </Menu.Trigger>
      <Menu.Portal>
        <Menu.Positioner className={styles.positioner} sideOffset={4} align="end">
          <Menu.Popup className={styles.popup}>
            <Menu.Group>
              <Menu.GroupLabel className={styles.groupLabel}>{sayTime("showMenu.force")}</Menu.GroupLabel>
              {traces.map((trace) => (
                <Menu.CheckboxItem
                  key={trace.id}
                  className={styles.item}
                  checked={shown.has(trace.id)}
                  onCheckedChange={(checked) => onShown(trace.id, checked)}
                >
                  <Menu.CheckboxItemIndicator className={styles.tick}>✓</Menu.CheckboxItemIndicator>
                  <span className={styles.text}>{capital(trace.name)}</span>
                </Menu.CheckboxItem>
              ))}
            </Menu.Group>
            <Menu.Separator className={styles.rule} />
            <Menu.Group>
              <Menu.GroupLabel className={styles.groupLabel}>{sayTime("showMenu.read")}</Menu.GroupLabel>
              <Menu.RadioGroup value={drawn} onValueChange={onDrawn}>
                {READINGS.map(({ value, label, detail }) => (
                  <Menu.RadioItem key={value} value={value} className={styles.item}>
                    <Menu.RadioItemIndicator className={styles.tick}>●</Menu.RadioItemIndicator>
                    <span className={styles.text}>
                      {label}
                      <small>{detail}</small>
                    </span>
                  </Menu.RadioItem>
                ))}
              </Menu.RadioGroup>
            </Menu.Group>
          </Menu.Popup>
        </Menu.Positioner>
      </Menu.Portal>
    </Menu.Root>
  );
}
