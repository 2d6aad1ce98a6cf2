import { Fragment, type ReactNode } from "react";
import { Button } from "../design/Button.tsx";
import { Disclosure } from "../design/Disclosure.tsx";
import { useSandbox } from "../state/useSandbox.ts";
import { AnchorFields } from "./AnchorFields.tsx";
import { BackupFields, JointFields } from "./BackupFields.tsx";
import { Faults } from "./Faults.tsx";
import { useFaultCount } from "./faults.ts";
import { GroundFields } from "./GroundFields.tsx";
import { LeashFields } from "./LeashFields.tsx";
import { LineFields } from "./LineFields.tsx";
import { Condition, Own, Rated } from "./parts.tsx";
import { RigField } from "./RigField.tsx";
import styles from "./RigSheet.module.css";
import { RigSketch } from "./RigSketch.tsx";

/** The whole rig document, from what is changed most to what is written once. */
export function RigSheet({ onClose }: { onClose?: () => void }) {
  const rig = useSandbox((state) => state.document.rig);
  const editing = useSandbox((state) => state.session.editing);
  return (
    <div className={styles.sheet}>
      <header className={styles.head}>
        <h2 className={styles.title}>The rig</h2>
        {onClose && <Button tone="quiet" icon="close" iconOnly label="Close the rig sheet" onClick={onClose} />}
      </header>
      <div className={styles.picture}>
        <RigSketch rig={rig} editing={editing} />
      </div>
      <div className={styles.scroll}>
        <Faults />
        <Group title="Most changed" groups={[]} open>
          <RigField path="span" slider />
          <RigField path="main.pretension" slider label="Tension of the main line" />
          {rig.backup && <QuickSlack />}
          <RigField path="leash.length" slider label="Length of the leash" />
          <RigField path="walker.mass" slider label="Mass of the walker" />
          <RigField path="requiredFactor" slider help />
          <RigField path="requiredAfterFailure" slider help />
          <RigField path="requiredClearance" slider help />
        </Group>
        <Group title="Site and ground" groups={["name", "id", "notes", "rise", "ground", "requiredFactorBasis"]}>
          <RigField path="name" />
          <RigField path="id" help />
          <RigField path="notes" />
          <RigField path="rise" slider />
          <RigField path="requiredFactorBasis" />
          <GroundFields />
        </Group>
        <Group title="Main line" groups={["main"]}>
          <RigField path="main.pretension" />
          <LineFields line="main" />
        </Group>
        <Group
          title="Backup"
          groups={["backup.slack", "backup.length", "backup.sections", "backup.endA", "backup.endB"]}
        >
          <BackupFields />
        </Group>
        <Group title="Connections and tapes" groups={["backup.connections", "backup.tapes"]}>
          <JointFields />
        </Group>
        <Group title="Leash and ring" groups={["leash", "rings"]}>
          <LeashFields />
        </Group>
        <Group title="Walker and harness" groups={["walker", "harness"]}>
          <RigField path="walker.mass" />
          <RigField path="walker.rescuer" help />
          <RigField path="walker.tieIn" help />
          <RigField path="walker.lateral" help />
          <Rated at="harness" />
          <Condition at="harness.condition" />
          <Own at="harness" />
        </Group>
        <Group title="Anchor A" groups={["anchorA"]}>
          <AnchorFields anchor="anchorA" />
        </Group>
        <Group title="Anchor B" groups={["anchorB"]}>
          <AnchorFields anchor="anchorB" />
        </Group>
        <OwnMaterials />
      </div>
    </div>
  );
}

/** Webbings and ropes that the file describes itself: what they are called, and what they count as. */
function OwnMaterials() {
  const stocks = useSandbox(({ document }) => (document.history.present as { stocks?: unknown }).stocks);
  if (!Array.isArray(stocks) || stocks.length === 0) return null;
  return (
    <Group title="Own materials" groups={["stocks"]}>
      {stocks.map((_, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a material is known by its place in the document
        <Fragment key={index}>
          <RigField path={`stocks[${index}].name`} />
          <RigField path={`stocks[${index}].fibre`} />
          <RigField path={`stocks[${index}].form`} />
        </Fragment>
      ))}
    </Group>
  );
}

function QuickSlack() {
  const { history } = useSandbox((state) => state.document);
  const backup = (history.present as { backup?: { slack?: unknown } }).backup;
  return backup?.slack === undefined ? null : <RigField path="backup.slack" slider label="Slack of the backup" />;
}

function Group({
  title,
  groups,
  open,
  children,
}: {
  title: string;
  groups: readonly string[];
  open?: boolean;
  children: ReactNode;
}) {
  const faults = useFaultCount(groups);
  return (
    <Disclosure
      title={<span className={styles.group}>{title}</span>}
      faults={faults}
      {...(open ? { defaultOpen: true } : {})}
    >
      {children}
    </Disclosure>
  );
}
