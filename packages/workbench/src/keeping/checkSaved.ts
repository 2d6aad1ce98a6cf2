/** Checks work that was kept on this device. It leaves out what cannot be read, tells the user, and gives that text for keeping. */

import { listed } from "@secondline/words";
import { tellFault } from "@secondline/words/faults";
import { sayFiles } from "@secondline/words/page/files";
import type { WrittenRig } from "../documents/documents.ts";
import type { Notice, ReadRig } from "../inHand/state.ts";
import { type LostPart, readSaved } from "./savedWork.ts";
import type { SavedWork } from "./work.ts";

export interface CheckedWork {
  /** Undefined: no work was kept, or its rig cannot be read. */
  readonly work: SavedWork | undefined;
  readonly notices: readonly Omit<Notice, "id">[];
  /** A document that could not be read, to be set aside. */
  readonly setAside: WrittenRig | undefined;
  /** All that was kept, as text, when not all of it could be read. */
  readonly unread?: string;
}

/** How to say that a part was lost. */
const WORDS: Readonly<Record<LostPart, string>> = {
  whatIf: sayFiles("savedWork.whatIfSight"),
  accuracy: sayFiles("savedWork.choiceMesh"),
  theme: sayFiles("savedWork.theme"),
  camera: sayFiles("savedWork.viewScene"),
  showForces: sayFiles("savedWork.whetherForcesShown"),
  wear: sayFiles("savedWork.wearAndLog"),
  session: sayFiles("savedWork.statePage"),
  entries: sayFiles("savedWork.entriesBeingPut"),
};

/** `saveText` hands a text to the user as a file. */
export function checkSaved(saved: unknown, read: ReadRig, saveText: (text: string, name: string) => void): CheckedWork {
  if (saved === undefined || saved === null) return { work: undefined, notices: [], setAside: undefined };
  const unread = textOf(saved);
  const action = { label: sayFiles("savedWork.saveWhatKept"), run: () => saveText(unread, "kept-work") };
  const reading = readSaved(saved, read);
  if (!reading.ok) {
    const { document: setAside, issues } = reading;
    const where = setAside ? sayFiles("savedWork.setAside") : sayFiles("savedWork.here");
    const text = sayFiles("savedWork.unreadable", { where });
    const details = issues.map(({ message }) => tellFault(message));
    return { work: undefined, notices: [{ tone: "fault", text, details, action }], setAside, unread };
  }
  const { work, lost } = reading;
  if (lost.length === 0) return { work, notices: [], setAside: undefined };
  const text = sayFiles("savedWork.partlyRead", {
    lost: listed(
      lost.map((part) => WORDS[part]),
      "and",
    ),
    count: lost.length,
  });
  return { work, notices: [{ tone: "fault", text, action }], setAside: undefined, unread };
}

/** What was kept may be anything that a browser can keep, also what JSON cannot say. */
function textOf(saved: unknown): string {
  const seen = new WeakSet<object>();
  return `${JSON.stringify(
    saved,
    (_key, value: unknown) => {
      if (typeof value === "bigint") return String(value);
      if (typeof value !== "object" || value === null) return value;
      if (seen.has(value)) return sayFiles("savedWork.seenAbove");
      seen.add(value);
      return value;
    },
    2,
  )}\n`;
}
