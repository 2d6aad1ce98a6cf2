/** Records and logs that can take the place of those that are open. */
import { dayAndTime } from "@secondline/words/dates";
import { sayWear } from "@secondline/words/page/wear";
import type { BreakLog, EarlierWear, WearWork, WrittenRecord } from "../documents/documents.ts";
import { NEW_RECORD, NO_LOG } from "./wearStart.ts";

export interface Replacement {
  readonly label: string;
  readonly detail?: string;
  readonly part: () => Partial<WearWork>;
  /** What the step is called. */
  readonly step: string;
}

/** Empty ones, and the examples. */
export function wearReplacements(example: {
  readonly record: WrittenRecord;
  readonly log: () => BreakLog;
}): Replacement[] {
  const detail = sayWear("useWearFiles.invented");
  return [
    {
      label: sayWear("useWearFiles.newRecordEntry"),
      part: () => ({ record: NEW_RECORD }),
      step: sayWear("useWearFiles.newRecordStep"),
    },
    {
      label: sayWear("useWearFiles.newBreakLogEntry"),
      part: () => ({ log: NO_LOG }),
      step: sayWear("useWearFiles.newBreakLogStep"),
    },
    {
      label: sayWear("useWearFiles.exampleRecord"),
      detail,
      part: () => ({ record: example.record }),
      step: sayWear("useWearFiles.openedExampleRecord"),
    },
    {
      label: sayWear("useWearFiles.exampleBreakLog"),
      detail,
      part: () => ({ log: example.log() }),
      step: sayWear("useWearFiles.openedExampleBreakLog"),
    },
  ];
}

/** Records and logs that were replaced before, newest first. */
export const earlierReplacements = (earlier: readonly EarlierWear[]): Replacement[] =>
  earlier.map(({ name, replaced, work }, i) => ({
    label: sayWear("useWearFiles.earlier", { kind: i + 1, name }),
    detail: sayWear("useWearFiles.replaced", { when: dayAndTime(new Date(replaced)) }),
    part: () => work,
    step: sayWear("useWearFiles.earlierWorkStep"),
  }));
