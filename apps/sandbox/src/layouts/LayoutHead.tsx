import { LAYOUT_LOOKS } from "@secondline/figures/time";
import { sayLayouts } from "@secondline/words/page/layouts";
import { canDisconnect, canLoosen, type Layout, LETTERS, type Preset, rigName, roleWords } from "@secondline/workbench";
import { ActionMenu, type MenuEntry } from "../design/ActionMenu.tsx";
import { Button } from "../design/Button.tsx";
import { useContextOrThrow, useSandbox } from "../state/useSandbox.ts";
import styles from "./LayoutColumn.module.css";
import { useChanges } from "./LayoutDifferences.tsx";
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
    { label: sayLayouts("layoutHead.change"), onSelect: onEdit },
    ...howFar,
    { label: sayLayouts("layoutHead.copy"), onSelect: onDuplicate, disabled: full },
    ...(place === 0
      ? []
      : ([
          {
            label: sayLayouts("layoutHead.take"),
            detail: sayLayouts("layoutHead.takeHint"),
            onSelect: () =>
              first.sandbox.actions.replaceRig(
                layout.sandbox.store.getState().document.goodDocument,
                sayLayouts("layoutHead.takeStep", { letter }),
              ),
          },
          "rule",
          { label: sayLayouts("layoutHead.takeAway"), onSelect: onRemove },
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
          <TraceSample look={LAYOUT_LOOKS[place]!} />{" "}
          {place === 0 ? sayLayouts("layoutHead.rigHand") : roleWords(changes)}
        </p>
      </div>
      <Button label={sayLayouts("layoutHead.changeLayout", { letter })} onClick={onEdit} />
      <ActionMenu label={sayLayouts("layoutHead.moreLayout", { letter })} icon="menu" iconOnly entries={entries} />
    </header>
  );
}

/** One step from a layout to what it can take; the view itself comes when it is asked for. */
function useHowFarEntries(place: number, first: Layout): readonly MenuEntry[] {
  const sandbox = useContextOrThrow();
  const rig = useSandbox((state) => state.document.rig);
  const open = async (preset?: Preset) => {
    const { howFarDesk } = await import("../desks/howFarHere.ts");
    const subject = place === 0 ? undefined : { sandbox, letter: LETTERS[place]! };
    howFarDesk(first.sandbox).about(subject, preset);
    first.sandbox.actions.look({ view: "howFar" });
  };
  return [
    { label: sayLayouts("layoutHead.howFarCan"), onSelect: () => void open() },
    ...(canLoosen(rig) ? [{ label: sayLayouts("layoutHead.howLooseMay"), onSelect: () => void open("loosest") }] : []),
    ...(canDisconnect(rig)
      ? [{ label: sayLayouts("layoutHead.howFewConnections"), onSelect: () => void open("fewest") }]
      : []),
  ];
}
