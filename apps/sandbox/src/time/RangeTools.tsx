import type { Recording } from "@secondline/engine";
import { useMemo } from "react";
import type { PlaybackClock } from "../clock/playbackClock.ts";
import { useClock } from "../clock/useClock.ts";
import { ActionMenu, type MenuEntry } from "../design/ActionMenu.tsx";
import type { ForceView } from "./forceDrawing.ts";
import { goToEntries } from "./goTo.ts";
import type { TimeRange } from "./plotGrid.ts";
import { TimeButton } from "./TimeButton.tsx";
import type { TimeView } from "./useTimeView.ts";
import { isFit } from "./visibleRange.ts";

interface Props {
  readonly recording: Recording;
  readonly clock: PlaybackClock;
  readonly view: TimeView;
  readonly forces: ForceView;
  readonly save: Saving;
  readonly compact: boolean;
}

/** The ways to keep what is in view as a file; a way that is absent is not offered. */
export interface Saving {
  readonly csv?: ((range: TimeRange) => void) | undefined;
  readonly plot?: ((kind: "png" | "svg") => void) | undefined;
}

/** Where to go, how much of the run to see, and the way out of it; one menu on a phone. */
export function RangeTools({ recording, clock, view, forces, save: saving, compact }: Props) {
  const goTo = useMemo(() => goToEntries(forces, view.marks, clock.seek), [forces, view.marks, clock]);
  const whole = isFit(view.range, recording.duration);
  const closer = () => view.act({ do: "zoom", direction: 1 });
  const farther = () => view.act({ do: "zoom", direction: -1 });
  const fit = () => view.act({ do: "fit" });
  const save = saveEntries(saving, view.range);
  const looping = useClock(clock, (state) => state.loop !== null);
  if (compact) {
    const moment: readonly MenuEntry[] = [
      { label: looping ? "Stop repeating" : "Repeat the event", onSelect: () => view.act({ do: "loop" }) },
      {
        label: view.measure === null ? "Measure from here" : "Stop measuring",
        onSelect: () => view.act({ do: "measure" }),
      },
    ];
    const range: readonly MenuEntry[] = [
      { label: "Show less of the run", onSelect: closer },
      { label: "Show more of the run", onSelect: farther, disabled: whole },
      { label: "Show the whole run", onSelect: fit, disabled: whole },
    ];
    return (
      <ActionMenu
        label="Go to, repeat, zoom, save"
        icon="menu"
        iconOnly
        entries={[...goTo, "rule", ...moment, "rule", ...range, "rule", ...save]}
      />
    );
  }
  return (
    <>
      <ActionMenu label="Go to" entries={goTo} />
      {save.length > 0 && <ActionMenu label="Save" entries={save} />}
      <TimeButton icon="farther" name="Show more of the run" keyName="−" onPress={farther} disabled={whole} />
      <TimeButton icon="closer" name="Show less of the run" keyName="+" onPress={closer} />
      <TimeButton icon="fit" name="Show the whole run" keyName="0" onPress={fit} disabled={whole} />
    </>
  );
}

function saveEntries({ csv, plot }: Saving, range: TimeRange): readonly MenuEntry[] {
  return [
    ...(csv ? [{ label: "Forces in view as CSV", onSelect: () => csv(range) }] : []),
    ...(plot
      ? [
          { label: "Plot as PNG", detail: "A picture, with its cautions", onSelect: () => plot("png") },
          { label: "Plot as SVG", detail: "For print: lines and letters", onSelect: () => plot("svg") },
        ]
      : []),
  ];
}
