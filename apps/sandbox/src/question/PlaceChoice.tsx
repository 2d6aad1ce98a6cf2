import { Popover } from "@base-ui/react/popover";
import { sayPage } from "@secondline/words/page/page";
import { placeWords } from "@secondline/workbench";
import { lazy } from "react";
import { Later } from "../design/Later.tsx";
import styles from "./PlaceChoice.module.css";

const PlaceFields = lazy(async () => ({ default: (await import("./PlaceFields.tsx")).PlaceFields }));

export interface PlaceProps {
  /** What is at the place, e.g. "The walker's place". */
  label: string;
  /** Fraction of the line, 0 at anchor A [-]. */
  at: number;
  /** [m] */
  span: number;
  /** A cut may lie at an anchor itself; a walker stands some way from it. */
  ends: boolean;
  onChange: (at: number) => void;
}

/** Chooses a place on the line: typed in metres from anchor A, or slid along a drawing of the line. */
export function PlaceChoice(props: PlaceProps) {
  const { label, at, span } = props;
  return (
    <Popover.Root>
      <Popover.Trigger className={styles.trigger} aria-label={`${label}: ${placeWords(at, span)}`}>
        {placeWords(at, span)}
      </Popover.Trigger>
      <Popover.Portal>
        <Popover.Positioner sideOffset={6} align="start" className={styles.positioner}>
          <Popover.Popup className={styles.popup}>
            <Popover.Title className={styles.title}>{label}</Popover.Title>
            <Later what={sayPage("placeChoice.choicePlace")}>
              <PlaceFields {...props} />
            </Later>
          </Popover.Popup>
        </Popover.Positioner>
      </Popover.Portal>
    </Popover.Root>
  );
}
