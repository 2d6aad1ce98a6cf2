import { sayPage } from "@secondline/words/page/page";
import { rigName } from "@secondline/workbench";
import { ActionMenu } from "../design/ActionMenu.tsx";
import { Button } from "../design/Button.tsx";
import type { Theme } from "../design/palette.ts";
import { UndoButtons } from "../design/UndoButtons.tsx";
import type { FileActions } from "../files/useFileActions.ts";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { isRig, useUndo } from "../state/useUndo.ts";
import styles from "./Header.module.css";
import { ViewMenu, ViewTabs } from "./ViewSwitch.tsx";

interface Props {
  files: FileActions;
  theme: Theme;
  wide: boolean;
}

export function Header({ files, theme, wide }: Props) {
  const name = useSandbox((state) => rigName(state.document.history.present.rig));
  const view = useSandbox((state) => state.session.view);
  const rigOpen = useSandbox((state) => state.session.rigOpen);
  const undoing = useUndo(isRig);
  const { look } = useActions();
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
        {view === "rig" && <UndoButtons {...undoing} />}
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
