import { sayPage } from "@secondline/words/page/page";
import { ActionMenu } from "../design/ActionMenu.tsx";
import { Button } from "../design/Button.tsx";
import type { Theme } from "../design/palette.ts";
import { UndoButtons } from "../design/UndoButtons.tsx";
import { rigName } from "../files/autosave.ts";
import type { FileActions } from "../files/useFileActions.ts";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import styles from "./Header.module.css";
import { ViewMenu, ViewTabs } from "./ViewSwitch.tsx";

interface Props {
  files: FileActions;
  theme: Theme;
  wide: boolean;
}

export function Header({ files, theme, wide }: Props) {
  const name = useSandbox((state) => rigName(state.document.history.present));
  const view = useSandbox((state) => state.session.view);
  const rigOpen = useSandbox((state) => state.session.rigOpen);
  const undoable = useSandbox((state) => state.document.history.past.at(-1)?.label);
  const redoable = useSandbox((state) => state.document.history.future[0]?.label);
  const { look, undo, redo } = useActions();
  const other = theme === "dark" ? "light" : "dark";
  return (
    <header className={styles.header}>
      {wide && view === "rig" && (
        <Button
          tone="quiet"
          icon="rig"
          label={sayPage("header.rig")}
          pressed={rigOpen}
          onClick={() => look({ rigOpen: !rigOpen })}
        />
      )}
      <h1 className={styles.name} title={name}>
        {name}
      </h1>
      {wide && <ViewTabs />}
      <div className={styles.tools}>
        {view === "rig" && <UndoButtons undoable={undoable} redoable={redoable} onUndo={undo} onRedo={redo} />}
        {!wide && <ViewMenu />}
        {wide && view === "rig" && (
          <span className={styles.begin}>
            <Button
              tone="quiet"
              icon="plus"
              label={sayPage("header.newRig")}
              onClick={() => look({ view: "newRig" })}
            />
          </span>
        )}
        <ActionMenu
          label={sayPage("header.file")}
          icon={wide ? "open" : "menu"}
          iconOnly={!wide}
          entries={files.entries}
        />
        <Button
          tone="quiet"
          icon={other}
          iconOnly
          label={other === "light" ? sayPage("header.toLight") : sayPage("header.toDark")}
          onClick={() => look({ theme: other })}
        />
        {wide && <span className={styles.brand}>Secondline</span>}
      </div>
    </header>
  );
}
