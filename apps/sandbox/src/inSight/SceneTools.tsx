import { ActionMenu } from "../design/ActionMenu.tsx";
import { Button } from "../design/Button.tsx";
import { Choice } from "../design/Choice.tsx";
import type { PictureKind } from "../files/savePicture.ts";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import styles from "./SceneTools.module.css";

const VIEWS = [
  { value: "event", label: "Close to the fall" },
  { value: "overview", label: "The whole line" },
  { value: "anchor", label: "From anchor A" },
  { value: "elevation", label: "Drawing from the side" },
] as const;

/** Where to look from, what to draw besides, and the way to keep it. */
export function SceneTools({ savePicture }: { savePicture: (kind: PictureKind) => void }) {
  const { camera, showForces, compare } = useSandbox((state) => state.session);
  const hasPrevious = useSandbox((state) => state.run.previous !== undefined);
  const { look } = useActions();
  return (
    <div className={styles.tools} data-over-scene>
      <Choice compact label="View" value={camera} options={VIEWS} onChange={(next) => look({ camera: next })} />
      <Button label="Forces" pressed={showForces} onClick={() => look({ showForces: !showForces })} />
      <ActionMenu
        label="Save a picture"
        icon="save"
        iconOnly
        entries={[
          { label: "Picture as seen", detail: "PNG, as large as on the screen", onSelect: () => savePicture("png") },
          { label: "Twice as large", detail: "PNG, for print", onSelect: () => savePicture("png2") },
          { label: "Drawing from the side", detail: "SVG: lines and letters", onSelect: () => savePicture("svg") },
        ]}
      />
      {hasPrevious && (
        <Button
          label="Compare"
          title="With the run before"
          pressed={compare}
          onClick={() => look({ compare: !compare })}
        />
      )}
    </div>
  );
}
