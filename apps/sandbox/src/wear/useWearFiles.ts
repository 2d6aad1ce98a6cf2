import { sayColumns as say } from "@secondline/words/columns";
import { sayWear } from "@secondline/words/page/wear";
import { createWearFiles, earlierReplacements, type Replacement, wearReplacements } from "@secondline/workbench/record";
import { useState } from "react";
import { useStore } from "zustand";
import type { MenuEntry } from "../design/ActionMenu.tsx";
import { chooseFile } from "../device/chooseFile.ts";
import { deviceShelf } from "../device/shelf.ts";
import { usePageKeys } from "../state/usePageKeys.ts";
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
  const replacing = ({ label, detail, part, step }: Replacement): MenuEntry => ({
    label,
    ...(detail === undefined ? {} : { detail }),
    onSelect: () => replace(part(), step),
  });
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
    ...wearReplacements({ record: EXAMPLE_RECORD, log: exampleLog }).map(replacing),
    ...(earlier.length > 0 ? ["rule" as const] : []),
    ...earlierReplacements(earlier).map(replacing),
  ];
  return { ...files, ...useStore(files.store), entries, choose };
}

/** Undo, redo, save and open act on the record while it is in sight. Text being typed keeps its own undo. */
export function useWearKeys(choose: () => void): void {
  const { undo, redo } = useActions();
  const work = useWear((state) => state.work);
  usePageKeys({ save: () => saveRecord(work.record), open: choose, undo, redo }, true);
}
