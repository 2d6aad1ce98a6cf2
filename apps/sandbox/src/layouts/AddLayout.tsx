import { sayLayouts } from "@secondline/words/page/layouts";
import { type Layout, LETTERS, type ReadRig, type WrittenLayout } from "@secondline/workbench";
import { issueLines, readRigFile } from "@secondline/workbench/files";
import { DEMO_RIGS } from "../demo/demoRigs.ts";
import { ActionMenu, type MenuEntry } from "../design/ActionMenu.tsx";
import { Button } from "../design/Button.tsx";
import { chooseFile, RIG_FILES } from "../device/chooseFile.ts";
import { useActions } from "../state/useSandbox.ts";
import styles from "./LayoutsView.module.css";

interface Props {
  list: readonly Layout[];
  read: ReadRig;
  onDuplicate: (layout: Layout) => void;
  onAdd: (written: WrittenLayout) => Layout | undefined;
  /** There is nothing to compare with yet: the invitation takes the empty place beside the open rig. */
  first?: boolean;
}

/** Ways to a further layout: a copy to change, a demo rig or a file. */
export function AddLayout({ list, read, onDuplicate, onAdd, first = false }: Props) {
  const { tell } = useActions();
  const take = (document: WrittenLayout["document"]) => onAdd({ document, goodDocument: document });

  async function open(file: File): Promise<void> {
    const opened = await readRigFile(file, read);
    if (opened.ok) take(opened.document);
    else
      tell({
        tone: "fault",
        text: sayLayouts("addLayout.unchanged", { text: opened.text }),
        details: issueLines(opened),
      });
  }
  const others: readonly MenuEntry[] = [
    { label: sayLayouts("addLayout.rigFile"), onSelect: () => chooseFile(RIG_FILES, open) },
    ...DEMO_RIGS.map(
      ({ title, detail, document }): MenuEntry => ({ label: title, detail, onSelect: () => void take(document) }),
    ),
  ];
  if (!first) {
    const copies = list.map(
      (layout, i): MenuEntry => ({
        label: sayLayouts("addLayout.copyChange", { letter: LETTERS[i]! }),
        onSelect: () => onDuplicate(layout),
      }),
    );
    return (
      <ActionMenu label={sayLayouts("addLayout.addLayout")} icon="plus" entries={[...copies, "rule", ...others]} />
    );
  }
  return (
    <section className={styles.invite} aria-label={sayLayouts("addLayout.addLayout")}>
      <p className={styles.inviteWords}>{sayLayouts("addLayout.why")}</p>
      <Button
        tone="filled"
        icon="plus"
        label={sayLayouts("addLayout.copyRigChange")}
        onClick={() => onDuplicate(list[0]!)}
      />
      <ActionMenu label={sayLayouts("addLayout.takeAnotherRig")} icon="open" entries={others} />
      <p className={styles.inviteNote}>{sayLayouts("addLayout.note")}</p>
    </section>
  );
}
