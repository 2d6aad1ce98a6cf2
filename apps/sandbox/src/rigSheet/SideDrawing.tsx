import { marksIn, quantityText, valueAt } from "@secondline/rig";
import { newRigWords } from "@secondline/words/newRig";
import { type Point, type Side, shareAt, sideOf } from "@secondline/workbench";
import { useMemo } from "react";
import { PlainSide } from "../side/PlainSide.tsx";
import { SideHandles } from "../side/SideHandles.tsx";
import { SideTools } from "../side/SideTools.tsx";
import styles from "../side/side.module.css";
import { type Held, type SideHost, useSideDesk } from "../side/sideDesk.ts";
import { sideFrame } from "../side/sideFrame.ts";
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

function Drawing({ side, grip }: { side: Side; grip: Held["kind"] }) {
  const host = useDocumentHost(side);
  const desk = useSideDesk(side, host);
  const {
    ref,
    size: { width },
  } = useFrameSize<HTMLDivElement>();
  // Of the profile before the hand took hold of it: a drawing that follows the hand runs away from it.
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

/** Writes moves into the rig's document, in the units in which it is written. */
function useDocumentHost(side: Side): SideHost {
  const { store, actions } = useContextOrThrow();
  const { edit, finishEdit, undo } = actions;
  const present = () => store.getState().document.history.present.rig;
  return {
    ground(points, moved, group) {
      if (moved !== undefined) {
        const written = valueAt(present(), `ground[${moved}]`) as readonly unknown[];
        edit(`ground[${moved}]`, asWritten(points[moved]!, written), say("side.stepMoved"), group);
        return;
      }
      const before = valueAt(present(), "ground") as readonly unknown[];
      const label = say(points.length > before.length ? "side.stepAdded" : "side.stepRemoved");
      const marks = marksIn(present());
      edit("ground", spliced(before, side.points, points), label, "ground by hand");
      // One point more or less confirms none of the others.
      if (marks.includes("ground")) edit("unconfirmed", marks, label, "ground by hand");
    },
    connection: (metres, index, group) =>
      edit(
        `backup.connections[${index}].at`,
        shareAt(metres[index]!, side.site.span),
        say("side.stepConnection"),
        group,
      ),
    takeBack(group) {
      if (store.getState().document.history.openGroup !== group) return false;
      undo();
      return true;
    },
    done: finishEdit,
  };
}

const asWritten = ([x, z]: Point, written: readonly unknown[]): readonly string[] =>
  [x, z].map((value, i) => quantityText(value, "length", String(written[i] ?? "1 m")));

/** What is written of the points that stay, as it is; a new one in the units of the one before. */
function spliced(written: readonly unknown[], before: readonly Point[], after: readonly Point[]): readonly unknown[] {
  return after.map((point, i) => {
    const was = before.indexOf(point);
    return was >= 0 ? written[was] : asWritten(point, (written[i - 1] ?? []) as readonly unknown[]);
  });
}
