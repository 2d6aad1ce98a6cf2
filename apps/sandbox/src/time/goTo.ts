import type { Recording } from "@secondline/engine";
import type { MenuEntry } from "../design/ActionMenu.tsx";
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
    return { label: capitalised(mark.label), detail: inSeconds(mark.time), onSelect: () => seek(mark.time) };
  });
  const peaks = view.shown.map((trace): MenuEntry => {
    const { force, time } = peakAs(recording.peaks[trace.signal], view.reading);
    const label = `Peak of the ${trace.inWords}, ${inKilonewtons(force)}`;
    return { label, detail: inSeconds(time), onSelect: () => seek(time) };
  });
  return events.length > 0 && peaks.length > 0 ? [...events, "rule", ...peaks] : [...events, ...peaks];
}
