import { capital, quantity } from "@secondline/words";
import { sayTime } from "@secondline/words/page/time";
import type { MenuEntry } from "../design/ActionMenu.tsx";
import type { Mark } from "./eventMarks.ts";
import type { ForceView } from "./forceDrawing.ts";

/** Every event and every peak by name, for those who would rather not aim at a mark. */
export function goToEntries(
  view: ForceView,
  marks: readonly Mark[],
  seek: (time: number) => void,
): readonly MenuEntry[] {
  const events = marks.map((mark): MenuEntry => {
    // With its time in the name: the leash may go taut more than once.
    return { label: `${capital(mark.label)}, ${quantity.seconds(mark.time)}`, onSelect: () => seek(mark.time) };
  });
  const peaks = view.shown.map(({ inWords, peaks }): MenuEntry => {
    const { force, time } = peaks[view.reading];
    const label = sayTime("goTo.peak", { inWords, load: quantity.load(force) });
    return { label, detail: quantity.seconds(time), onSelect: () => seek(time) };
  });
  return events.length > 0 && peaks.length > 0 ? [...events, "rule", ...peaks] : [...events, ...peaks];
}
