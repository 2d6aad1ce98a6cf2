import { type Layout, LETTERS, type Preset } from "@secondline/workbench";
import { ActionMenu, type MenuEntry } from "../design/ActionMenu.tsx";
import { Button } from "../design/Button.tsx";
import { rigName } from "../state/rigName.ts";
import { useContextOrThrow, useSandbox } from "../state/useSandbox.ts";
import styles from "./LayoutColumn.module.css";
import { MOST_CHANGES, useChanges } from "./LayoutDifferences.tsx";
import { LOOKS } from "./layoutLook.ts";
import { TraceSample } from "./TraceSample.tsx";

interface Props {
  layout: Layout;
  place: number;
  first: Layout;
  full: boolean;
  onEdit: () => void;
  onDuplicate: () => void;
  onRemove: () => void;
}

/** Letter, name and how its trace looks, with what can be done to the layout. */
export function LayoutHead({ layout, place, first, full, onEdit, onDuplicate, onRemove }: Props) {
  const changes = useChanges(first).length;
  const name = useSandbox((state) => rigName(state.document.history.present.rig));
  const letter = LETTERS[place]!;
  const howFar = useHowFarEntries(place, first);
  const entries: readonly MenuEntry[] = [
    { label: "Change", onSelect: onEdit },
    ...howFar,
    { label: "Copy and change the copy", onSelect: onDuplicate, disabled: full },
    ...(place === 0
      ? []
      : ([
          {
            label: "Take as the rig in hand",
            detail: "In place of A; undo brings A back",
            onSelect: () =>
              first.sandbox.actions.replaceRig(
                layout.sandbox.store.getState().document.goodDocument,
                `took layout ${letter}`,
              ),
          },
          "rule",
          { label: "Take away", onSelect: onRemove },
        ] satisfies MenuEntry[])),
  ];
  return (
    <header className={styles.head}>
      <span className={styles.letter}>{letter}</span>
      <div className={styles.names}>
        <h3 className={styles.name} title={name}>
          {name}
        </h3>
        <p className={styles.role}>
          <TraceSample look={LOOKS[place]!} /> {place === 0 ? "the rig in hand" : roleWords(changes)}
        </p>
      </div>
      <Button label={`Change ${letter}`} onClick={onEdit} />
      <ActionMenu label={`More for layout ${letter}`} icon="menu" iconOnly entries={entries} />
    </header>
  );
}

/** One step from a layout to what it can take; the view itself comes when it is asked for. */
function useHowFarEntries(place: number, first: Layout): readonly MenuEntry[] {
  const sandbox = useContextOrThrow();
  const backup = useSandbox((state) => state.document.rig.backup);
  const open = async (preset?: Preset) => {
    const { howFarDesk } = await import("../desks/howFarHere.ts");
    const subject = place === 0 ? undefined : { sandbox, letter: LETTERS[place]! };
    howFarDesk(first.sandbox).about(subject, preset);
    first.sandbox.actions.look({ view: "howFar" });
  };
  return [
    { label: "How far can it go?", onSelect: () => void open() },
    ...(backup ? [{ label: "How loose may the backup be?", onSelect: () => void open("loosest") }] : []),
    ...(backup?.connections.some(({ kind }) => kind !== "tape")
      ? [{ label: "How few connections will do?", onSelect: () => void open("fewest") }]
      : []),
  ];
}

function roleWords(changes: number): string {
  if (changes === 0) return "the same as A";
  if (changes > MOST_CHANGES) return "another rig";
  return changes === 1 ? "A with one change" : `A with ${changes} changes`;
}
