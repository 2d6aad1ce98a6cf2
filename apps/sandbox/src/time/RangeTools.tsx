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
  const less = {
    icon: "plus",
    label: sayTime("rangeTools.showLessRun"),
    keyName: "+",
    onClick: () => view.act({ do: "zoom", direction: 1 }),
  } as const;
  const more = {
    icon: "minus",
    label: sayTime("rangeTools.showMoreRun"),
    keyName: "−",
    onClick: () => view.act({ do: "zoom", direction: -1 }),
    disabled: whole,
  } as const;
  const all = {
    icon: "fit",
    label: sayTime("rangeTools.showWholeRun"),
    keyName: "0",
    onClick: () => view.act({ do: "fit" }),
    disabled: whole,
  } as const;
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
      { label: less.label, onSelect: less.onClick },
      { label: more.label, onSelect: more.onClick, disabled: whole },
      { label: all.label, onSelect: all.onClick, disabled: whole },
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
      {[more, less, all].map((tool) => (
        <Button key={tool.icon} tone="quiet" iconOnly {...tool} />
      ))}
    </>
  );
}

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
