/** What a page begins with: a rig in a link, else the work kept on this device, else the rig of a first visit. */
import type { RigIssue } from "@secondline/rig";
import { sayPage } from "@secondline/words/page/page";
import type { WrittenRig } from "../documents/documents.ts";
import { rigName } from "../documents/rigName.ts";
import type { Start } from "../inHand/sandbox.ts";
import type { Notice } from "../inHand/state.ts";
import type { ReadLink } from "../link/link.ts";
import type { SavedWork } from "./work.ts";

export interface Begun {
  readonly start: Start;
  /** Told once the page is there, with the faults of a link behind it. */
  readonly notice: Omit<Notice, "id" | "details"> | undefined;
  readonly faults: readonly RigIssue[];
  /** A rig of a link takes its place: it is to be kept as a copy. */
  readonly replaced: WrittenRig | undefined;
}

export function startFrom(link: ReadLink, saved: SavedWork | undefined, first: WrittenRig): Begun {
  const kept: Start = saved ?? { document: first, goodDocument: first };
  if (link.kind === "none") return { start: kept, notice: undefined, faults: [], replaced: undefined };
  if (link.kind === "broken") {
    const { text, issues } = link.opened;
    return { start: kept, notice: { tone: "fault", text }, faults: issues, replaced: undefined };
  }
  const { document, whatIf, camera, part } = link;
  const session = {
    ...saved?.session,
    ...(whatIf ? { whatIf } : {}),
    ...(camera ? { camera } : {}),
    selectedPart: part,
  };
  const text = sayPage(saved ? "boot.openedLinkKept" : "boot.openedLink", { rigName: rigName(document) });
  return {
    start: { document, goodDocument: document, session },
    notice: { tone: "word", text },
    faults: [],
    replaced: saved?.goodDocument,
  };
}
