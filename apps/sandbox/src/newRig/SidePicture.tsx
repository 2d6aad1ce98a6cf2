import { quantity } from "@secondline/words";
import { newRigWords } from "@secondline/words/newRig";
import type { Theme } from "../design/palette.ts";
import { Elevation } from "../elevation/Elevation.tsx";
import type { SceneClock } from "../scene/sceneProps.ts";
import styles from "./newRig.module.css";
import type { Sketched } from "./useSketch.ts";

/** Nothing moves: the rig at rest. */
const AT_REST: SceneClock = { getSnapshot: () => ({ time: 0 }), subscribe: () => () => undefined };

/** The rig from the side as it follows from the answers; `isOld`: as it was before some that are to be put right. */
export function SidePicture({
  sketched,
  theme,
  isOld,
}: {
  sketched: Sketched | undefined;
  theme: Theme;
  isOld: boolean;
}) {
  const { say } = newRigWords;
  if (!sketched) return <p className={styles.coming}>{say("sketch.coming")}</p>;
  const { rig, recording } = sketched;
  return (
    <>
      <div className={styles.drawing} role="img" aria-label={say("sketch", { span: quantity.length(rig.span) })}>
        <Elevation
          bare
          rig={rig}
          recording={recording}
          clock={AT_REST}
          theme={theme}
          camera="elevation"
          showForces={false}
          reducedMotion
        />
      </div>
      {isOld && <p className={styles.old}>{say("sketch.kept")}</p>}
    </>
  );
}
