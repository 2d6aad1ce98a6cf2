import { sayColumns as say } from "@secondline/words/columns";
import { dayAndTime } from "@secondline/words/dates";
import { sayWear } from "@secondline/words/page/wear";
import { createWearFiles, NEW_RECORD, NO_LOG } from "@secondline/workbench/record";
import { useEffect, useState } from "react";
import { useStore } from "zustand";
import type { MenuEntry } from "../design/ActionMenu.tsx";
import { chooseFile } from "../device/chooseFile.ts";
import { deviceShelf } from "../device/shelf.ts";
import { useActions, useContextOrThrow } from "../state/useSandbox.ts";
import { useWear, useWearActions } from "../wearInHand/useWear.ts";
import { EXAMPLE_RECORD, exampleLog } from "../wearInHand/work.ts";
import { saveLog, saveRecord, saveTemplate } from "./wearFiles.ts";

/** What can be done with records and logs: the menu, dropped files, and what was refused. */
export function useWearFiles() {
  const { actions: page } = useContextOrThrow();
  const { replace, look } = useWearActions();
  const work = useWear((state) => state.work);
  const wearPage = useWear((state) => state.page);
  const earlier = useWear((state) => state.earlier);
  const [files] = useState(() => createWearFiles({ page, wear: { replace, look }, shelf: deviceShelf }));
  const { open } = files;
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
  return { ...files, ...useStore(files.store), entries, choose };
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
