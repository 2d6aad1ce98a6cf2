import { Button } from "../design/Button.tsx";
import { Choice } from "../design/Choice.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import styles from "./SceneTools.module.css";

const VIEWS = [
  { value: "event", label: "Close to the fall" },
  { value: "overview", label: "The whole line" },
  { value: "elevation", label: "From the side" },
  { value: "anchor", label: "From anchor A" },
  { value: "drawing", label: "Flat drawing" },
] as const;
type View = (typeof VIEWS)[number]["value"];

/** Where to look from, and what to draw besides. */
export function SceneTools() {
  const { scene, camera, showForces, compare } = useSandbox((state) => state.session);
  const hasPrevious = useSandbox((state) => state.run.previous !== undefined);
  const { look } = useActions();
  const view: View = scene === "side" ? "drawing" : camera;
  return (
    <div className={styles.tools}>
      <Choice
        compact
        label="View"
        value={view}
        options={VIEWS}
        onChange={(next) => look(next === "drawing" ? { scene: "side" } : { scene: "3d", camera: next })}
      />
      <Button label="Forces" pressed={showForces} onClick={() => look({ showForces: !showForces })} />
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
