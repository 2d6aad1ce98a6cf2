import { sayWear } from "@secondline/words/page/wear";
import type { WearPage } from "@secondline/workbench";
import { lazy, useEffect } from "react";
import { ActionMenu } from "../design/ActionMenu.tsx";
import { Later } from "../design/Later.tsx";
import { UndoButtons } from "../design/UndoButtons.tsx";
import { useFileDrop } from "../files/useFileDrop.ts";
import { useContextOrThrow } from "../state/useSandbox.ts";
import { isRig, useUndo } from "../state/useUndo.ts";
import { TeardownPage } from "../teardown/TeardownPage.tsx";
import { CautionFoot } from "../verdict/CautionFoot.tsx";
import { useWear, useWearActions, WearContext } from "../wearInHand/useWear.ts";
import { tellKnown, wearStoreOf } from "../wearInHand/work.ts";
import { words } from "../words.ts";
import { BreakLogPage, LogFaults } from "./BreakLogPage.tsx";
import { RecordPage } from "./RecordPage.tsx";
import { useWearFiles, useWearKeys } from "./useWearFiles.ts";
import styles from "./wear.module.css";

/** `short`: where a phone has no room for more. */
const PAGES: readonly { readonly page: WearPage; readonly label: string; readonly short: string }[] = [
  { page: "record", label: sayWear("wearView.wearRecord"), short: sayWear("wearView.record") },
  { page: "log", label: sayWear("wearView.breakLog"), short: sayWear("wearView.log") },
  { page: "teardown", label: sayWear("wearView.teardown"), short: sayWear("wearView.teardown") },
];

const MatchColumns = lazy(async () => ({ default: (await import("./MatchColumns.tsx")).MatchColumns }));

/** What happened to the webbing and what it still holds: the record, the break log, and the take-down date. */
export function WearView({ wide }: { wide: boolean }) {
  const sandbox = useContextOrThrow();
  useEffect(() => void tellKnown(sandbox), [sandbox]);
  return (
    <WearContext.Provider value={wearStoreOf(sandbox)}>
      <Pages wide={wide} />
    </WearContext.Provider>
  );
}

function Pages({ wide }: { wide: boolean }) {
  const page = useWear((state) => state.page);
  const files = useWearFiles();
  const over = useFileDrop(files.open, true);
  useWearKeys(files.choose);
  return (
    <div className={styles.view}>
      <Bar entries={files.entries} wide={wide} />
      <main key={page} className={styles.page} aria-label={PAGES.find((one) => one.page === page)!.label}>
        {files.matching && (
          <Later what={sayWear("wearView.columnsPart")}>
            <MatchColumns
              key={files.matching.file}
              {...files.matching}
              onTake={files.take}
              onCancel={files.leaveMatching}
            />
          </Later>
        )}
        {files.refused && <LogFaults {...files.refused} onClose={files.closeRefused} />}
        {page === "record" && <RecordPage wide={wide} />}
        {page === "log" && <BreakLogPage wide={wide} />}
        {page === "teardown" && <TeardownPage />}
      </main>
      <CautionFoot cautions={words.generalCautions()} />
      {over && <div className={styles.drop}>{sayWear("wearView.dropHere")}</div>}
    </div>
  );
}

function Bar({ entries, wide }: { entries: Parameters<typeof ActionMenu>[0]["entries"]; wide: boolean }) {
  const page = useWear((state) => state.page);
  const undoing = useUndo((name) => !isRig(name));
  const { look } = useWearActions();
  return (
    <div className={styles.bar}>
      <nav className={styles.tabs} aria-label={sayWear("wearView.recordLog")}>
        {PAGES.map(({ page: name, label, short }) => (
          <button
            key={name}
            type="button"
            className={styles.tab}
            aria-label={label}
            aria-current={name === page ? "page" : undefined}
            onClick={() => look({ page: name, test: undefined })}
          >
            {wide ? label : short}
          </button>
        ))}
      </nav>
      <UndoButtons {...undoing} />
      <ActionMenu label={sayWear("wearView.records")} entries={entries} />
    </div>
  );
}
