import type { Recording } from "@secondline/engine";
import type { MenuEntry } from "../design/ActionMenu.tsx";
import { connectionPeaks } from "./connectionPeaks.ts";
import type { Mark } from "./eventMarks.ts";
import type { ForceView } from "./forceDrawing.ts";
import { capitalised, inKilonewtons, inSeconds } from "./format.ts";
import { peakAs } from "./traces.ts";

/** Every event and every peak by name, for those who would rather not aim at a mark. */
export function goToEntries(
  recording: Recording,
  view: ForceView,
  marks: readonly Mark[],
  seek: (time: number) => void,
): readonly MenuEntry[] {
  const events = marks.map((mark): MenuEntry => {
    // With its time in the name: the leash may go taut more than once.
    return { label: `${capitalised(mark.label)}, ${inSeconds(mark.time)}`, onSelect: () => seek(mark.time) };
  });
  const traces = view.shown.map(({ signal, inWords }) => {
    return { name: `the ${inWords}`, ...peakAs(recording.peaks[signal], view.reading) };
  });
  const peaks = [...traces, ...connectionPeaks(recording)].map(({ name, force, time }): MenuEntry => {
    return { label: `Peak of ${name}, ${inKilonewtons(force)}`, detail: inSeconds(time), onSelect: () => seek(time) };
  });
  return events.length > 0 && peaks.length > 0 ? [...events, "rule", ...peaks] : [...events, ...peaks];
}
