import { sayPage } from "@secondline/words/page/page";
import {
  fileName,
  type PlaybackClock,
  type ReadRig,
  rigName,
  viewOfOpened,
  type WrittenRig,
} from "@secondline/workbench";
import { useMemo, useState } from "react";
import { DEMO_TITLES } from "../demo/firstRig.ts";
import type { MenuEntry } from "../design/ActionMenu.tsx";
import { chooseFile as choose, RIG_FILES } from "../device/chooseFile.ts";
import { download } from "../device/download.ts";
import type { WorkStore } from "../device/workStore.ts";
import { useContextOrThrow } from "../state/useSandbox.ts";

export interface FileActions {
  readonly entries: readonly MenuEntry[];
  readonly openFile: (file: File) => Promise<void>;
  readonly chooseFile: () => void;
  readonly save: () => void;
  /** The page of earlier work is open; undefined: it never was. */
  readonly earlier: boolean | undefined;
  readonly showEarlier: (open: boolean) => void;
  readonly openDocument: (document: WrittenRig, label: string) => void;
}

/** What can be done with files, for the menu, the keys and dropped files. */
export function useFileActions(works: WorkStore | undefined, clock: PlaybackClock, read: ReadRig): FileActions {
  const { store, actions } = useContextOrThrow();
  const [earlier, showEarlier] = useState<boolean>();
  const handlers = useMemo(() => {
    const present = () => store.getState().document.history.present.rig;

    /** The current work is kept before another rig takes its place; undo brings it back as well. */
    function openDocument(document: WrittenRig, label: string): void {
      const before = present();
      void works?.keepCopy(before, rigName(before), Date.now()).catch(() => undefined);
      actions.replaceRig(document, label);
      actions.look({ view: viewOfOpened(store.getState().session.view) });
      actions.announce(sayPage("useFileActions.opened", { rigName: rigName(document) }));
    }
    /** Parts that come when they are asked for; where one does not arrive, that is told and nothing else happens. */
    async function arrived<T>(part: Promise<T>, does: string): Promise<T | undefined> {
      const here = await part.catch(() => undefined);
      if (!here) {
        const text = sayPage("useFileActions.partMissing", { does });
        actions.tell({ tone: "fault", text });
      }
      return here;
    }
    async function openFile(file: File): Promise<void> {
      const reading = await arrived(import("@secondline/workbench/files"), sayPage("useFileActions.readsFiles"));
      if (!reading) return;
      const opened = await reading.readRigFile(file, read);
      const text = opened.ok ? "" : sayPage("useFileActions.unchanged", { text: opened.text });
      if (opened.ok) openDocument(opened.document, sayPage("useFileActions.openedFileStep", { name: file.name }));
      else actions.tell({ tone: "fault", text, details: reading.issueLines(opened) });
    }
    const chooseFile = () => choose(RIG_FILES, openFile);
    function save(): void {
      const rig = present();
      download(`${JSON.stringify(rig, null, 2)}\n`, fileName(rigName(rig), "json"), "application/json");
    }
    const share = async () =>
      (await arrived(import("./shareLink.ts"), sayPage("useFileActions.makesLinks")))?.shareLink({
        store,
        actions,
        clock,
      });
    async function report(): Promise<void> {
      const parts = Promise.all([import("@secondline/workbench/files"), import("./saveReport.ts")]);
      const [making, saving] = (await arrived(parts, sayPage("useFileActions.makesReports"))) ?? [];
      if (making && saving)
        await making.makeReport({ store, actions }, (outcome) => saving.saveReport({ store }, outcome, new Date()));
    }
    async function openDemo(index: number): Promise<void> {
      const demo = (await arrived(import("../demo/demoRigs.ts"), sayPage("useFileActions.holdsDemoRigs")))?.DEMO_RIGS[
        index
      ];
      if (demo) openDocument(demo.document, sayPage("useFileActions.openedDemoStep", { title: demo.title }));
    }
    const demos: readonly MenuEntry[] = DEMO_TITLES.map(({ title, detail }, index) => ({
      label: title,
      detail,
      onSelect: () => void openDemo(index),
    }));
    const entries: readonly MenuEntry[] = [
      {
        label: sayPage("useFileActions.newRig"),
        detail: sayPage("useFileActions.newRigHint"),
        onSelect: () => actions.look({ view: "newRig" }),
      },
      { label: sayPage("useFileActions.openRigFile"), onSelect: chooseFile },
      { label: sayPage("useFileActions.saveFile"), onSelect: save },
      {
        label: sayPage("useFileActions.copyLink"),
        detail: sayPage("useFileActions.copyLinkHint"),
        onSelect: () => void share(),
      },
      {
        label: sayPage("useFileActions.saveReport"),
        detail: sayPage("useFileActions.saveReportHint"),
        onSelect: () => void report(),
      },
      {
        label: sayPage("useFileActions.siteCard"),
        detail: sayPage("useFileActions.siteCardHint"),
        onSelect: () => actions.look({ view: "card" }),
      },
      {
        label: sayPage("useFileActions.earlierWork"),
        onSelect: () => showEarlier(true),
        disabled: works === undefined,
      },
      "rule",
      ...demos,
    ];
    return { entries, openFile, chooseFile, save, openDocument };
  }, [store, actions, works, clock, read]);
  return { ...handlers, earlier, showEarlier };
}
