import { sayPage } from "@secondline/words/page/page";
import { ActionMenu } from "../design/ActionMenu.tsx";
import { Button } from "../design/Button.tsx";
import { Choice } from "../design/Choice.tsx";
import type { PictureKind } from "../files/savePicture.ts";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import styles from "./SceneTools.module.css";

const VIEWS = [
  { value: "event", label: sayPage("sceneTools.closeFall") },
  { value: "overview", label: sayPage("sceneTools.wholeLine") },
  { value: "anchor", label: sayPage("sceneTools.anchor") },
  { value: "elevation", label: sayPage("sceneTools.drawingSide") },
] as const;

const PICTURES = [
  { kind: "png", label: sayPage("sceneTools.asSeen"), detail: sayPage("sceneTools.asSeenHint") },
  { kind: "png2", label: sayPage("sceneTools.twiceLarge"), detail: sayPage("sceneTools.twiceLargeHint") },
  { kind: "svg", label: sayPage("sceneTools.drawingSide"), detail: sayPage("sceneTools.svgHint") },
] as const;

/** Where to look from, what to draw besides, and the way to keep it. */
export function SceneTools({ savePicture }: { savePicture: (kind: PictureKind) => void }) {
  const { camera, showForces, compare } = useSandbox((state) => state.session);
  const hasPrevious = useSandbox((state) => state.run.previous !== undefined);
  const { look } = useActions();
  return (
    <div className={styles.tools} data-over-scene>
      <Choice
        compact
        label={sayPage("sceneTools.view")}
        value={camera}
        options={VIEWS}
        onChange={(next) => look({ camera: next })}
      />
      <Button
        label={sayPage("sceneTools.forces")}
        pressed={showForces}
        onClick={() => look({ showForces: !showForces })}
      />
      <ActionMenu
        label={sayPage("sceneTools.savePicture")}
        icon="save"
        iconOnly
        entries={PICTURES.map(({ kind, ...entry }) => ({ ...entry, onSelect: () => savePicture(kind) }))}
      />
      {hasPrevious && (
        <Button
          label={sayPage("sceneTools.compare")}
          title={sayPage("sceneTools.runBefore")}
          pressed={compare}
          onClick={() => look({ compare: !compare })}
        />
      )}
    </div>
  );
}
