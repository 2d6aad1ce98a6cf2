import { newRigWords } from "@secondline/words/newRig";
import { documentHost, type Held, type SideView, sideFrame, sideOf } from "@secondline/workbench";
import { useMemo } from "react";
import { PlainSide } from "../side/PlainSide.tsx";
import { SideHandles } from "../side/SideHandles.tsx";
import { SideTools } from "../side/SideTools.tsx";
import styles from "../side/side.module.css";
import { useSideDesk } from "../side/useSideDesk.ts";
import { useContextOrThrow, useSandbox } from "../state/useSandbox.ts";
import { useFrameSize } from "../time/useFrameSize.ts";

const { say } = newRigWords;

/** The rig from the side with handles on its ground or its connections; nothing while that cannot be read. */
export function SideDrawing({ grip }: { grip: Held["kind"] }) {
  const document = useSandbox((state) => state.document.history.present.rig);
  const side = useMemo(() => sideOf(document), [document]);
  if (!side || (grip === "ground" ? side.points : side.connections).length === 0) return null;
  return <Drawing side={side} grip={grip} />;
}

function Drawing({ side, grip }: { side: SideView; grip: Held["kind"] }) {
  const host = documentHost(useContextOrThrow(), side);
  const desk = useSideDesk(side, host);
  const {
    ref,
    size: { width },
  } = useFrameSize<HTMLDivElement>();
  // The frame is that of the profile before the drag: a frame that follows the hand would run away from it.
  const projection = useMemo(() => sideFrame(side, Math.max(width, 200)), [side, width]);
  return (
    <>
      <div ref={ref} className={styles.sheet} style={{ height: projection.height }}>
        <PlainSide side={desk.shown} projection={projection} />
        <SideHandles desk={desk} projection={projection} grips={[grip]} />
      </div>
      {grip === "ground" ? <SideTools desk={desk} /> : <p className={styles.help}>{say("side.helpConnections")}</p>}
    </>
  );
}
