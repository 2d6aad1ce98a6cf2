import { capital, quantity } from "@secondline/words";
import { sayTime } from "@secondline/words/page/time";
import type { EventMark } from "./eventMarks.ts";
import type { ForceView } from "./forceDrawing.ts";

/** An entry of the list; "rule" parts events from peaks. */
export type GoToEntry = { readonly label: string; readonly detail?: string; readonly onSelect: () => void } | "rule";

/** Every event and every peak by name, for readers who would rather not aim at a mark. */
export function goToEntries(
  view: ForceView,
  marks: readonly EventMark[],
  seek: (time: number) => void,
): readonly GoToEntry[] {
  const events = marks.map((mark): GoToEntry => {
    // With its time in the name: the leash may go taut more than once.
    return { label: `${capital(mark.label)}, ${quantity.seconds(mark.time)}`, onSelect: () => seek(mark.time) };
  });
  const peaks = view.shown.map(({ inWords, peaks }): GoToEntry => {
    const { force, time } = peaks[view.reading];
    const label = sayTime("goTo.peak", { inWords, load: quantity.load(force) });
    return { label, detail: quantity.seconds(time), onSelect: () => seek(time) };
  });
  return events.length > 0 && peaks.length > 0 ? [...events, "rule", ...peaks] : [...events, ...peaks];
}
