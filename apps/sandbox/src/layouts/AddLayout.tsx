import { type Layout, LETTERS, type ReadRig, type WrittenLayout } from "@secondline/workbench";
import { DEMO_RIGS } from "../demo/demoRigs.ts";
import { ActionMenu, type MenuEntry } from "../design/ActionMenu.tsx";
import { Button } from "../design/Button.tsx";
import { chooseFile, RIG_FILES } from "../device/chooseFile.ts";
import { issueLines } from "../files/issueLines.ts";
import { readRigFile } from "../files/readFile.ts";
import { useActions } from "../state/useSandbox.ts";
import styles from "./LayoutsView.module.css";

interface Props {
  list: readonly Layout[];
  read: ReadRig;
  onDuplicate: (layout: Layout) => void;
  onAdd: (written: WrittenLayout) => Layout | undefined;
  /** There is nothing to compare with yet: the invitation takes the empty place beside the rig in hand. */
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
        text: `${opened.text} The layouts are unchanged.`,
        details: issueLines(opened),
      });
  }
  const others: readonly MenuEntry[] = [
    { label: "A rig file…", onSelect: () => chooseFile(RIG_FILES, open) },
    ...DEMO_RIGS.map(
      ({ title, detail, document }): MenuEntry => ({ label: title, detail, onSelect: () => void take(document) }),
    ),
  ];
  if (!first) {
    const copies = list.map(
      (layout, i): MenuEntry => ({
        label: `Copy ${LETTERS[i]} and change it`,
        onSelect: () => onDuplicate(layout),
      }),
    );
    return <ActionMenu label="Add a layout" icon="plus" entries={[...copies, "rule", ...others]} />;
  }
  return (
    <section className={styles.invite} aria-label="Add a layout">
      <p className={styles.inviteWords}>Put a second layout beside it, and see what one change does.</p>
      <Button tone="filled" icon="plus" label="Copy this rig and change it" onClick={() => onDuplicate(list[0]!)} />
      <ActionMenu label="Take another rig" icon="open" entries={others} />
      <p className={styles.inviteNote}>Up to four, all with the same what-if. Your rig itself stays as it is.</p>
    </section>
  );
}
