import { valueAt } from "@secondline/rig";
import { spokenGroup } from "@secondline/words/fields";
import { newRigWords } from "@secondline/words/newRig";
import { sayRigSheet } from "@secondline/words/page/rigSheet";
import { putGround } from "@secondline/workbench";
import { Button } from "../design/Button.tsx";
import { Disclosure } from "../design/Disclosure.tsx";
import { useContextOrThrow, useSandbox } from "../state/useSandbox.ts";
import styles from "./GroundFields.module.css";
import { GroundShort } from "./GroundShort.tsx";
import { ConfirmOne } from "./Marks.tsx";
import { RigField } from "./RigField.tsx";
import { SideDrawing } from "./SideDrawing.tsx";

/** The ground below the line as points from A to B. */
export function GroundFields() {
  const value = useSandbox((state) => valueAt(state.document.history.present.rig, "ground"));
  const points = Array.isArray(value) ? (value as unknown[][]) : [];
  const sandbox = useContextOrThrow();
  const put = (next: readonly unknown[], label: string) => putGround(sandbox, next, label);
  return (
    <div>
      <ConfirmOne path="ground" name={spokenGroup("ground") ?? "ground"} named />
      <Disclosure title={newRigWords.say("ground.short")} level={4}>
        <GroundShort />
      </Disclosure>
      <SideDrawing grip="ground" />
      {points.map((point, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a point is known by its place in the list
        <div key={index} className={styles.point}>
          <RigField
            path={`ground[${index}][0]`}
            label={sayRigSheet("groundFields.pointFromA", { number: index + 1 })}
          />
          <RigField
            path={`ground[${index}][1]`}
            label={sayRigSheet("groundFields.pointHeight", { number: index + 1 })}
          />
          <div className={styles.tools}>
            <Button
              tone="quiet"
              icon="plus"
              iconOnly
              label={sayRigSheet("groundFields.addPointAfter", { number: index + 1 })}
              onClick={() =>
                put(points.toSpliced(index + 1, 0, [...point]), sayRigSheet("groundFields.groundPointAdded"))
              }
            />
            <Button
              tone="quiet"
              icon="bin"
              iconOnly
              label={sayRigSheet("groundFields.removePoint", { number: index + 1 })}
              disabled={points.length <= 2}
              onClick={() => put(points.toSpliced(index, 1), sayRigSheet("groundFields.groundPointRemoved"))}
            />
          </div>
        </div>
      ))}
    </div>
  );
}
