/** Moves by hand as steps of the rig's document. */
import { marksIn, quantityText, valueAt } from "@secondline/rig";
import { newRigWords } from "@secondline/words/newRig";
import type { Sandbox } from "../inHand/sandbox.ts";
import { shareAt } from "./connections.ts";
import type { SideHost } from "./held.ts";
import type { Point, SideView } from "./side.ts";

const { say } = newRigWords;

/** Writes moves into the rig's document, in the units in which it is written. */
export function documentHost({ store, actions }: Sandbox, side: SideView): SideHost {
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
