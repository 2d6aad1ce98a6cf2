/** The work kept on a device, as far as it can be read; what cannot is set aside and told, and nothing unread is overwritten. */
import { sayPage } from "@secondline/words/page/page";
import { rigName } from "../documents/rigName.ts";
import type { Notice, ReadRig } from "../inHand/state.ts";
import { type Shelf, setAside } from "./shelf.ts";
import type { SavedWork, WorkKeeper } from "./work.ts";

export interface FoundWork {
  readonly saved: SavedWork | undefined;
  /** Work is kept there from now on. */
  readonly isWritable: boolean;
  readonly notices: readonly Omit<Notice, "id">[];
}

export interface FindServices {
  readonly read: ReadRig;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  readonly shelf: () => Shelf;
  /** Hands a text out as a file of that name. */
  readonly handOut: (text: string, name: string) => void;
  /** What reads kept work; a first visit has kept nothing, and does without. */
  readonly reader: () => Promise<Pick<typeof import("./checkSaved.ts"), "checkSaved">>;
}

export async function findWork(
  works: (Pick<WorkKeeper, "keepCopy"> & { load(): Promise<unknown> }) | undefined,
  { read, now, shelf, handOut, reader }: FindServices,
): Promise<FoundWork> {
  if (!works) return { saved: undefined, isWritable: false, notices: [] };
  let kept: unknown;
  let check: Awaited<ReturnType<FindServices["reader"]>>["checkSaved"];
  try {
    kept = await works.load();
    if (kept === undefined || kept === null) return { saved: undefined, isWritable: true, notices: [] };
    check = (await reader()).checkSaved;
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    const text = sayPage("boot.keptWorkUnreadable", { reason });
    return { saved: undefined, isWritable: false, notices: [{ tone: "fault", text }] };
  }
  const checked = check(kept, read, handOut);
  const { setAside: lost, unread, work, notices } = checked;
  if (lost) await works.keepCopy(lost, rigName(lost), now()).catch(() => undefined);
  // The next autosave writes over it; a copy stays for whoever looks for it later.
  if (unread !== undefined) setAside(shelf(), "secondline.work", unread);
  return { saved: work, isWritable: true, notices };
}
