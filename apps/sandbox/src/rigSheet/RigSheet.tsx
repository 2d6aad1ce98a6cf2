import { sayRigSheet } from "@secondline/words/page/rigSheet";
import { MOST_CHANGED, type OwnItem, SHEET_GROUPS, type SheetGroup, type SheetItem } from "@secondline/workbench";
import { Button } from "../design/Button.tsx";
import { Disclosure } from "../design/Disclosure.tsx";
import { useSandbox } from "../state/useSandbox.ts";
import { BackupFields, JointFields } from "./BackupFields.tsx";
import { Faults } from "./Faults.tsx";
import { useFaultCount } from "./faults.ts";
import { GroundFields } from "./GroundFields.tsx";
import { Items } from "./Items.tsx";
import { ConfirmAll, MarkedTitle, MarksState } from "./Marks.tsx";
import { Legs, SpanAndRise } from "./Measured.tsx";
import { OwnMaterials } from "./OwnMaterials.tsx";
import styles from "./RigSheet.module.css";
import { RigSketch } from "./RigSketch.tsx";

/** The whole rig document, from what is changed most to what is written once. */
export function RigSheet({ onClose }: { onClose?: () => void }) {
  const rig = useSandbox((state) => state.document.rig);
  const editing = useSandbox((state) => state.session.editing);
  return (
    <div className={styles.sheet}>
      <header className={styles.head}>
        <h2 className={styles.title}>{sayRigSheet("rigSheet.rig")}</h2>
        {onClose && (
          <Button tone="quiet" icon="close" iconOnly label={sayRigSheet("rigSheet.closeRigSheet")} onClick={onClose} />
        )}
      </header>
      <div className={styles.picture}>
        <RigSketch rig={rig} editing={editing} />
      </div>
      <div className={styles.scroll}>
        <Faults />
        <MarksState />
        <Group {...MOST_CHANGED} open />
        {SHEET_GROUPS.map((group) => (
          <Group key={group.title} {...group} />
        ))}
      </div>
    </div>
  );
}

function Group({ title, groups, items, open = false }: SheetGroup & { open?: boolean }) {
  const faults = useFaultCount(groups);
  const head = (
    <span className={styles.group}>
      <MarkedTitle title={title} groups={groups} />
    </span>
  );
  return (
    <Disclosure title={head} faults={faults} {...(open ? { defaultOpen: true } : {})}>
      <ConfirmAll groups={groups} />
      {items.map((item) => (
        <GroupItem key={`${item.kind} ${"at" in item ? item.at : ""}`} item={item} />
      ))}
    </Disclosure>
  );
}

function GroupItem({ item }: { item: SheetItem | OwnItem }) {
  switch (item.kind) {
    case "measuredSite":
      return <SpanAndRise />;
    case "ground":
      return <GroundFields />;
    case "backup":
      return <BackupFields />;
    case "joints":
      return <JointFields />;
    case "legs":
      return <Legs anchor={item.at} />;
    case "materials":
      return <OwnMaterials />;
    default:
      return <Items of={[item]} />;
  }
}
