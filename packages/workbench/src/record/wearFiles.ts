/** Records and logs from files: what is taken, what is refused, and a table whose columns somebody must match first. */
import type { BreakTest, LogFault } from "@secondline/strength";
import { sayColumns } from "@secondline/words/columns";
import { sayWear } from "@secondline/words/page/wear";
import { createStore, type StoreApi } from "zustand/vanilla";
import { rememberedMatch, rememberMatch } from "../breakLog/keptMatches.ts";
import type { LogTable } from "../breakLog/logTable.ts";
import { type ColumnMatch, suggestMatch } from "../breakLog/match.ts";
import type { Actions } from "../inHand/sandbox.ts";
import { keepingTrouble, type Shelf } from "../keeping/shelf.ts";
import type { WearActions } from "../wear/wearStore.ts";
import { openWearFile } from "./readWear.ts";

/** A file whose columns are being matched. */
export interface Matching {
  readonly file: string;
  readonly table: LogTable;
  readonly invented: boolean;
  readonly first: ColumnMatch;
  readonly remembered: boolean;
}

export interface WearFilesState {
  readonly refused: { readonly name: string; readonly faults: readonly LogFault[] } | undefined;
  readonly matching: Matching | undefined;
}

export interface WearFiles {
  readonly store: StoreApi<WearFilesState>;
  readonly open: (file: Parameters<typeof openWearFile>[0]) => Promise<void>;
  readonly closeRefused: () => void;
  /** The tests of the table, as matched; the matching is remembered. */
  readonly take: (tests: readonly BreakTest[], match: ColumnMatch) => void;
  readonly leaveMatching: () => void;
}

export interface WearFilesServices {
  readonly page: Pick<Actions, "announce" | "tell">;
  readonly wear: Pick<WearActions, "replace" | "look">;
  readonly shelf: () => Shelf;
}

const NOTHING: WearFilesState = { refused: undefined, matching: undefined };

export function createWearFiles({ page, wear, shelf }: WearFilesServices): WearFiles {
  const store = createStore<WearFilesState>(() => NOTHING);

  async function open(file: Parameters<typeof openWearFile>[0]): Promise<void> {
    const opened = await openWearFile(file);
    const { name } = file;
    store.setState(NOTHING);
    switch (opened.kind) {
      case "record":
        wear.replace({ record: opened.record }, sayWear("useWearFiles.opened", { name }));
        wear.look({ page: "record" });
        page.announce(sayWear("useWearFiles.openedWearRecord", { name: opened.record.name }));
        break;
      case "log":
        wear.replace({ log: opened.log }, sayWear("useWearFiles.opened", { name }));
        wear.look({ page: "log" });
        page.announce(sayWear("useWearFiles.openedBreakTests", { count: opened.log.tests.length }));
        break;
      case "columns": {
        const { table, invented } = opened;
        const kept = rememberedMatch(shelf(), table);
        const first = kept ?? suggestMatch(table);
        wear.look({ page: "log" });
        store.setState({ matching: { file: name, table, invented, first, remembered: kept !== undefined } });
        break;
      }
      case "logFaults":
        wear.look({ page: "log" });
        store.setState({ refused: { name, faults: opened.faults } });
        break;
      case "refused":
        page.tell({ tone: "fault", text: opened.text, details: opened.details });
    }
  }

  function take(tests: readonly BreakTest[], match: ColumnMatch): void {
    const { matching } = store.getState();
    if (!matching) return;
    const { file, table, invented } = matching;
    store.setState({ matching: undefined });
    const log = { name: file.replace(/\.[^.]+$/, ""), invented, tests };
    wear.replace({ log }, sayWear("useWearFiles.openedFile", { file }));
    page.announce(sayColumns("took", { count: tests.length, file }));
    try {
      rememberMatch(shelf(), table, match);
    } catch (error) {
      const why = keepingTrouble(error);
      page.tell({ tone: "fault", text: sayColumns("notKept", { why }) });
    }
  }
  return {
    store,
    open,
    take,
    closeRefused: () => store.setState({ refused: undefined }),
    leaveMatching: () => store.setState({ matching: undefined }),
  };
}
