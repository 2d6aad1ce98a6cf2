/** Events that no factor covers. Such an event asks for an inspection and stays open until somebody has judged it. */
import type { Note } from "@secondline/rig";
import { isBefore, type PlainDate } from "../dates/calendarDate.ts";
import { noteFact } from "../noteFacts.ts";
import type { Judgement } from "./judgement.ts";

/** A reason for an inspection. */
export type OpenNeed = Happened | Unfit;

interface Since {
  readonly since: PlainDate;
  /** Last day of the event, if it took longer than one. */
  readonly until?: PlainDate;
  /** Positions on the webbing, from the marked end [m]; absent for the whole webbing, and for a part. */
  readonly from?: number;
  readonly to?: number;
}

export interface Happened extends Since {
  readonly what: "edge" | "storm" | "heat" | "hotRing" | "hardFall";
  readonly note?: string;
}

/** A judgement that the webbing or part must come down: by whom, when, and the finding. */
interface Unfit extends Since {
  readonly unfit: Note;
}

/** A doubt that somebody wrote down after looking: a factor on the strength, or the cautious one. */
export interface InspectionDoubt {
  readonly factor?: number;
  readonly reason: Note;
  readonly from?: number;
  readonly to?: number;
}

interface Inspection extends Judgement {
  readonly date: PlainDate;
  readonly from?: number;
  readonly to?: number;
}

export interface NeedsAndDoubts {
  readonly needs: readonly OpenNeed[];
  readonly doubts: readonly InspectionDoubt[];
}

/**
 * Needs that stay open after an inspection: those outside of the inspected stretch, and those of events that went on after it.
 */
export function afterInspection({ needs, doubts }: NeedsAndDoubts, inspection: Inspection): NeedsAndDoubts {
  const { judgement, by, found, factor, date } = inspection;
  const place = placeOf(inspection);
  const stillOpen = needs.filter((need) => !covers(inspection, need) || (need.until && isBefore(date, need.until)));
  const stillDoubted = doubts.filter((doubt) => !covers(inspection, doubt));
  const reason = noteFact("judged.found", { by, on: { day: `${date}` }, found });
  switch (judgement) {
    case "sound":
      return { needs: stillOpen, doubts: stillDoubted };
    case "doubtful":
      return {
        needs: stillOpen,
        doubts: [...stillDoubted, { reason, ...place, ...(factor === undefined ? {} : { factor }) }],
      };
    case "unfit": {
      const unfit = { since: date, unfit: reason, ...place };
      return { needs: [...stillOpen, unfit], doubts: stillDoubted };
    }
  }
}

export interface EntryStretch {
  readonly from?: number;
  readonly to?: number;
}

function placeOf({ from, to }: EntryStretch): EntryStretch {
  return { ...(from === undefined ? {} : { from }), ...(to === undefined ? {} : { to }) };
}

/** Whether an inspection took in all of a stretch; one without a place took in everything. */
export function covers(inspection: EntryStretch, { from, to }: EntryStretch): boolean {
  const { from: first = Number.NEGATIVE_INFINITY, to: last = Number.POSITIVE_INFINITY } = inspection;
  return first <= (from ?? Number.NEGATIVE_INFINITY) && (to ?? Number.POSITIVE_INFINITY) <= last;
}
