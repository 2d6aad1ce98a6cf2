import { Button } from "../design/Button.tsx";
import { Choice } from "../design/Choice.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import styles from "./SceneTools.module.css";

const VIEWS = [
  { value: "event", label: "Close to the fall" },
  { value: "overview", label: "The whole line" },
  { value: "anchor", label: "From anchor A" },
  { value: "elevation", label: "Drawing from the side" },
] as const;

/** Where to look from, and what to draw besides. */
export function SceneTools() {
  const { camera, showForces, compare } = useSandbox((state) => state.session);
  const hasPrevious = useSandbox((state) => state.run.previous !== undefined);
  const { look } = useActions();
  return (
    <div className={styles.tools} data-over-scene>
      <Choice compact label="View" value={camera} options={VIEWS} onChange={(next) => look({ camera: next })} />
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
