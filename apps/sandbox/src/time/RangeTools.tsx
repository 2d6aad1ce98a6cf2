import type { Recording } from "@secondline/engine";
import { type ForceView, goToEntries, isFit, type TimeRange } from "@secondline/figures/time";
import { sayTime } from "@secondline/words/page/time";
import type { PlaybackClock } from "@secondline/workbench";
import { useMemo } from "react";
import { useClock } from "../clock/useClock.ts";
import { ActionMenu, type MenuEntry } from "../design/ActionMenu.tsx";
import { Button } from "../design/Button.tsx";
import type { TimeView } from "./useTimeView.ts";

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
      {
        label: looping ? sayTime("rangeTools.stopRepeating") : sayTime("rangeTools.repeatEvent"),
        onSelect: () => view.act({ do: "loop" }),
      },
      {
        label: view.measure === null ? sayTime("rangeTools.measureHere") : sayTime("rangeTools.stopMeasuring"),
        onSelect: () => view.act({ do: "measure" }),
      },
    ];
    const range: readonly MenuEntry[] = [
      { label: sayTime("rangeTools.showLessRun"), onSelect: closer },
      { label: sayTime("rangeTools.showMoreRun"), onSelect: farther, disabled: whole },
      { label: sayTime("rangeTools.showWholeRun"), onSelect: fit, disabled: whole },
    ];
    return (
      <ActionMenu
        label={sayTime("rangeTools.name")}
        icon="menu"
        iconOnly
        entries={[...goTo, "rule", ...moment, "rule", ...range, "rule", ...save]}
      />
    );
  }
  return (
    <>
      <ActionMenu label={sayTime("rangeTools.go")} entries={goTo} />
      {save.length > 0 && <ActionMenu label={sayTime("rangeTools.save")} entries={save} />}
      <Button
        {...TOOL}
        icon="minus"
        label={sayTime("rangeTools.showMoreRun")}
        keyName="−"
        onClick={farther}
        disabled={whole}
      />
      <Button {...TOOL} icon="plus" label={sayTime("rangeTools.showLessRun")} keyName="+" onClick={closer} />
      <Button
        {...TOOL}
        icon="fit"
        label={sayTime("rangeTools.showWholeRun")}
        keyName="0"
        onClick={fit}
        disabled={whole}
      />
    </>
  );
}

const TOOL = { tone: "quiet", iconOnly: true } as const;

function saveEntries({ csv, plot }: Saving, range: TimeRange): readonly MenuEntry[] {
  return [
    ...(csv ? [{ label: sayTime("rangeTools.forcesViewCsv"), onSelect: () => csv(range) }] : []),
    ...(plot
      ? [
          {
            label: sayTime("rangeTools.plotPng"),
            detail: sayTime("rangeTools.plotPngHint"),
            onSelect: () => plot("png"),
          },
          {
            label: sayTime("rangeTools.plotSvg"),
            detail: sayTime("rangeTools.plotSvgHint"),
            onSelect: () => plot("svg"),
          },
        ]
      : []),
  ];
}
