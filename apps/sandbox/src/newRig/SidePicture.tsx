import { isSameView, lineHeight } from "@secondline/figures/scene";
import { quantity } from "@secondline/words";
import { newRigWords } from "@secondline/words/newRig";
import { flatProjection, type Sketched } from "@secondline/workbench";
import { useEffect, useMemo, useState } from "react";
import type { Theme } from "../design/palette.ts";
import { Elevation, type ElevationProps } from "../scene/elevation/Elevation.tsx";
import type { SceneClock } from "../scene/sceneProps.ts";
import { SideHandles } from "../side/SideHandles.tsx";
import type { SideInHand } from "../side/useSideDesk.ts";
import styles from "./newRig.module.css";

/** Nothing moves: the rig at rest. It is drawn anew when somebody says so. */
class AtRest implements SceneClock {
  readonly #drawing = new Set<() => void>();
  readonly getSnapshot = () => ({ time: 0 });
  readonly subscribe = (draw: () => void) => {
    this.#drawing.add(draw);
    return () => void this.#drawing.delete(draw);
  };
  drawAnew(): void {
    for (const draw of this.#drawing) draw();
  }
}

interface Props {
  sketched: Sketched | undefined;
  theme: Theme;
  /** The picture is that of the rig before some answers that still have a fault. */
  isOld: boolean;
  /** What can be moved by hand; undefined while the answers do not say it. */
  hand: SideInHand | undefined;
}

type Seen = Parameters<NonNullable<ElevationProps["onView"]>>;

/** The rig from the side as it follows from the answers, with handles on ground and connections. */
export function SidePicture({ sketched, theme, isOld, hand }: Props) {
  const { say } = newRigWords;
  const [seen, setSeen] = useState<Seen>();
  const onView = useMemo(
    () =>
      (...next: Seen) =>
        setSeen((now) => (now && isSame(now, next) ? now : next)),
    [],
  );
  const lineAt = useMemo(() => lineHeight(sketched?.recording), [sketched]);
  const projection = useMemo(() => seen && flatProjection(...seen, lineAt), [seen, lineAt]);
  const [atRest] = useState(() => new AtRest());
  const shown = hand?.shown;
  // Labels make room for the handles where these are now.
  // biome-ignore lint/correctness/useExhaustiveDependencies: what moves the handles
  useEffect(() => atRest.drawAnew(), [atRest, shown, projection]);
  if (!sketched) return <p className={styles.coming}>{say("sketch.coming")}</p>;
  const { rig, recording } = sketched;
  return (
    <>
      <div className={styles.drawing} data-scene>
        <div className={styles.layer} role="img" aria-label={say("sketch", { span: quantity.length(rig.span) })}>
          <Elevation
            rig={rig}
            recording={recording}
            clock={atRest}
            theme={theme}
            camera="elevation"
            showForces={false}
            reducedMotion
            onView={onView}
          />
        </div>
        {hand && projection && <SideHandles desk={hand} projection={projection} grips={["ground", "connection"]} />}
      </div>
      {isOld && <p className={styles.old}>{say("sketch.kept")}</p>}
    </>
  );
}

const isSame = ([view, was]: Seen, [next, size]: Seen): boolean =>
  isSameView(view, next) && was.width === size.width && was.height === size.height;
