import type { BreakTest, LogFault } from "@secondline/strength";
import { sayColumns as say } from "@secondline/words/columns";
import { dayAndTime } from "@secondline/words/dates";
import { sayWear } from "@secondline/words/page/wear";
import { type ColumnMatch, type LogTable, rememberedMatch, rememberMatch, suggestMatch } from "@secondline/workbench";
import { openWearFile } from "@secondline/workbench/record";
import { useEffect, useState } from "react";
import type { MenuEntry } from "../design/ActionMenu.tsx";
import { chooseFile } from "../device/chooseFile.ts";
import { deviceShelf } from "../device/shelf.ts";
import { useActions, useContextOrThrow } from "../state/useSandbox.ts";
import { useWear, useWearActions } from "../wearInHand/useWear.ts";
import { EXAMPLE_RECORD, exampleLog, NEW_RECORD, NO_LOG } from "../wearInHand/work.ts";
import { saveLog, saveRecord, saveTemplate } from "./wearFiles.ts";

export interface RefusedLog {
  readonly name: string;
  readonly faults: readonly LogFault[];
}

/** A file whose columns are being matched. */
export interface Matching {
  readonly file: string;
  readonly table: LogTable;
  readonly invented: boolean;
  readonly first: ColumnMatch;
  readonly remembered: boolean;
}

function matchingOf(file: string, table: LogTable, invented: boolean): Matching {
  const kept = rememberedMatch(deviceShelf(), table);
  return { file, table, invented, first: kept ?? suggestMatch(table), remembered: kept !== undefined };
}

/** What can be done with records and logs: the menu, dropped files, and what was refused. */
export function useWearFiles() {
  const { actions: page } = useContextOrThrow();
  const { replace, look } = useWearActions();
  const work = useWear((state) => state.work);
  const wearPage = useWear((state) => state.page);
  const earlier = useWear((state) => state.earlier);
  const [refused, setRefused] = useState<RefusedLog>();
  const [matching, setMatching] = useState<Matching>();

  async function open(file: File): Promise<void> {
    const opened = await openWearFile(file);
    setRefused(undefined);
    setMatching(undefined);
    switch (opened.kind) {
      case "record":
        replace({ record: opened.record }, sayWear("useWearFiles.opened", { name: file.name }));
        look({ page: "record" });
        return page.announce(sayWear("useWearFiles.openedWearRecord", { name: opened.record.name }));
      case "log":
        replace({ log: opened.log }, sayWear("useWearFiles.opened", { name: file.name }));
        look({ page: "log" });
        return page.announce(sayWear("useWearFiles.openedBreakTests", { count: opened.log.tests.length }));
      case "columns":
        look({ page: "log" });
        return setMatching(matchingOf(file.name, opened.table, opened.invented));
      case "logFaults":
        look({ page: "log" });
        return setRefused({ name: file.name, faults: opened.faults });
      case "refused":
        return page.tell({ tone: "fault", text: opened.text, details: opened.details });
    }
  }
  const choose = () => chooseFile(".json,.csv,application/json,text/csv", open);
  async function saveFigures(): Promise<void> {
    const inView = document.querySelector("main");
    const onLog = wearPage === "log";
    try {
      if (!inView) throw new Error(sayWear("useWearFiles.noPageInView"));
      await (await import("../files/saveFigures.ts")).saveFigures(inView, {
        title: onLog ? work.log.name : work.record.name,
        input: onLog ? work.log : work.record,
        invented: onLog ? work.log.invented : work.record.invented === true,
      });
      page.announce(sayWear("useWearFiles.figuresSaved"));
    } catch (error) {
      const reason = error instanceof Error ? error.message : String(error);
      page.tell({ tone: "fault", text: sayWear("useWearFiles.figuresNotSaved", { reason }) });
    }
  }
  const entries: readonly MenuEntry[] = [
    {
      label: sayWear("useWearFiles.openFile"),
      detail: sayWear("useWearFiles.openFileHint"),
      onSelect: choose,
    },
    { label: sayWear("useWearFiles.saveWearRecord"), onSelect: () => saveRecord(work.record) },
    {
      label: sayWear("useWearFiles.saveBreakLog"),
      detail: sayWear("useWearFiles.breakLogHint"),
      onSelect: () => saveLog(work.log),
      disabled: work.log.tests.length === 0,
    },
    { label: say("template"), detail: say("templateDetail"), onSelect: saveTemplate },
    {
      label: sayWear("useWearFiles.saveFigures"),
      detail: sayWear("useWearFiles.figuresHint"),
      onSelect: () => void saveFigures(),
    },
    "rule",
    {
      label: sayWear("useWearFiles.newRecordEntry"),
      onSelect: () => replace({ record: NEW_RECORD }, sayWear("useWearFiles.newRecordStep")),
    },
    {
      label: sayWear("useWearFiles.newBreakLogEntry"),
      onSelect: () => replace({ log: NO_LOG }, sayWear("useWearFiles.newBreakLogStep")),
    },
    {
      label: sayWear("useWearFiles.exampleRecord"),
      detail: sayWear("useWearFiles.invented"),
      onSelect: () => replace({ record: EXAMPLE_RECORD }, sayWear("useWearFiles.openedExampleRecord")),
    },
    {
      label: sayWear("useWearFiles.exampleBreakLog"),
      detail: sayWear("useWearFiles.invented"),
      onSelect: () => replace({ log: exampleLog() }, sayWear("useWearFiles.openedExampleBreakLog")),
    },
    ...(earlier.length > 0 ? ["rule" as const] : []),
    ...earlier.map(({ name, replaced, work: old }, i) => ({
      label: sayWear("useWearFiles.earlier", { kind: i + 1, name }),
      detail: sayWear("useWearFiles.replaced", {
        when: dayAndTime(new Date(replaced)),
      }),
      onSelect: () => replace(old, sayWear("useWearFiles.earlierWorkStep")),
    })),
  ];
  function take(tests: readonly BreakTest[], match: ColumnMatch): void {
    if (!matching) return;
    const { file, table, invented } = matching;
    setMatching(undefined);
    replace(
      { log: { name: file.replace(/\.[^.]+$/, ""), invented, tests } },
      sayWear("useWearFiles.openedFile", { file }),
    );
    page.announce(say("took", { count: tests.length, file }));
    try {
      rememberMatch(deviceShelf(), table, match);
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      page.tell({ tone: "fault", text: say("notKept", { why }) });
    }
  }
  return {
    entries,
    open,
    choose,
    refused,
    closeRefused: () => setRefused(undefined),
    matching,
    take,
    leaveMatching: () => setMatching(undefined),
  };
}

/** Takes dropped files before the page does: here they are records and logs, not rigs. */
export function useWearDrop(open: (file: File) => Promise<void>): boolean {
  const [over, setOver] = useState(false);
  useEffect(() => {
    const hasFiles = (event: DragEvent) => event.dataTransfer?.types.includes("Files") ?? false;
    const on = (kind: "dragover" | "dragleave" | "drop") => (event: DragEvent) => {
      if (!hasFiles(event)) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      if (kind === "dragover") return setOver(true);
      if (kind === "dragleave") return event.relatedTarget === null ? setOver(false) : undefined;
      setOver(false);
      const file = event.dataTransfer?.files[0];
      if (file) void open(file);
    };
    const listeners = (["dragover", "dragleave", "drop"] as const).map((kind) => [kind, on(kind)] as const);
    for (const [kind, listener] of listeners) addEventListener(kind, listener, true);
    return () => {
      for (const [kind, listener] of listeners) removeEventListener(kind, listener, true);
    };
  }, [open]);
  return over;
}

/** Undo, redo, save and open act on the record while it is in sight. Text being typed keeps its own undo. */
export function useWearKeys(choose: () => void): void {
  const { undo, redo } = useActions();
  const work = useWear((state) => state.work);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      const key = event.key.toLowerCase();
      const typing = event.target instanceof HTMLInputElement && event.target.type !== "range";
      if (!["s", "o", "z", "y"].includes(key)) return;
      event.stopImmediatePropagation();
      if (typing && (key === "z" || key === "y")) return;
      event.preventDefault();
      if (key === "s") saveRecord(work.record);
      else if (key === "o") choose();
      else if (key === "y" || event.shiftKey) redo();
      else undo();
    };
    addEventListener("keydown", onKey, true);
    return () => removeEventListener("keydown", onKey, true);
  }, [undo, redo, choose, work]);
}
