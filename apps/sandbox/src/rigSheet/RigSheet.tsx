import { newRigWords } from "@secondline/words/newRig";
import { sayRigSheet } from "@secondline/words/page/rigSheet";
import { placeAnchorB } from "@secondline/workbench";
import { Fragment, type ReactNode } from "react";
import { Button } from "../design/Button.tsx";
import { Disclosure } from "../design/Disclosure.tsx";
import { MeasuredSite } from "../measure/MeasuredSite.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { OwnStock } from "../stocks/OwnStock.tsx";
import { AnchorFields } from "./AnchorFields.tsx";
import { BackupFields, JointFields } from "./BackupFields.tsx";
import { Faults } from "./Faults.tsx";
import { useFaultCount } from "./faults.ts";
import { GroundFields } from "./GroundFields.tsx";
import { LeashFields } from "./LeashFields.tsx";
import { LineFields } from "./LineFields.tsx";
import { ConfirmAll, MarkedTitle, MarksState } from "./Marks.tsx";
import { ConditionFields, Own, RatedFields } from "./parts.tsx";
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
        <Group title={sayRigSheet("rigSheet.mostChanged")} groups={[]} open>
          <RigField path="span" slider />
          <RigField path="main.pretension" slider label={sayRigSheet("rigSheet.tensionMainLine")} />
          {rig.backup && <QuickSlack />}
          <RigField path="leash.length" slider label={sayRigSheet("rigSheet.lengthLeash")} />
          <RigField path="walker.mass" slider label={sayRigSheet("rigSheet.massWalker")} />
          <RigField path="requiredFactor" slider help />
          <RigField path="requiredAfterFailure" slider help />
          <RigField path="requiredClearance" slider help />
        </Group>
        <Group
          title={sayRigSheet("rigSheet.siteGround")}
          groups={["name", "id", "notes", "span", "rise", "latitude", "ground", "requiredFactorBasis"]}
        >
          <RigField path="name" />
          <RigField path="id" help />
          <RigField path="notes" />
          <RigField path="rise" slider />
          <RigField path="latitude" unsaid={sayRigSheet("rigField.latitudeNotSaid")} />
          <FromMeasured />
          <RigField path="requiredFactorBasis" />
          <GroundFields />
        </Group>
        <Group title={sayRigSheet("rigSheet.mainLine")} groups={["main"]}>
          <RigField path="main.pretension" />
          <LineFields line="main" />
        </Group>
        <Group
          title={sayRigSheet("rigSheet.backup")}
          groups={["backup.slack", "backup.length", "backup.sections", "backup.endA", "backup.endB"]}
        >
          <BackupFields />
        </Group>
        <Group title={sayRigSheet("rigSheet.connectionsTapes")} groups={["backup.connections", "backup.tapes"]}>
          <JointFields />
        </Group>
        <Group title={sayRigSheet("rigSheet.leashRing")} groups={["leash", "rings"]}>
          <LeashFields />
        </Group>
        <Group title={sayRigSheet("rigSheet.walkerHarness")} groups={["walker", "harness"]}>
          <RigField path="walker.mass" />
          <RigField path="walker.rescuer" help />
          <RigField path="walker.tieIn" help />
          <RigField path="walker.lateral" help />
          <RatedFields at="harness" />
          <ConditionFields at="harness.condition" />
          <Own at="harness" />
        </Group>
        <Group title={sayRigSheet("rigSheet.anchorA")} groups={["anchorA"]}>
          <AnchorFields anchor="anchorA" />
        </Group>
        <Group title={sayRigSheet("rigSheet.anchorB")} groups={["anchorB"]}>
          <AnchorFields anchor="anchorB" />
        </Group>
        <OwnMaterials />
      </div>
    </div>
  );
}

/** Span and rise in one step, with the ground moved along. */
function FromMeasured() {
  const { change } = useActions();
  return (
    <Disclosure title={newRigWords.say("measured.open")} level={4}>
      <MeasuredSite
        onTake={(site) => change((before) => placeAnchorB(before, site), newRigWords.say("measured.step"))}
      />
    </Disclosure>
  );
}

/** Webbings and ropes that the file describes itself: what they are called, what they hold and weigh, and the way to one more. */
function OwnMaterials() {
  const written = useSandbox(({ document }) => (document.history.present.rig as { stocks?: unknown }).stocks);
  const { edit } = useActions();
  const stocks: readonly { readonly name?: unknown; readonly id?: unknown }[] = Array.isArray(written) ? written : [];
  return (
    <Group title={sayRigSheet("rigSheet.ownMaterials")} groups={["stocks"]}>
      {stocks.map((_, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a material is known by its place in the document
        <Fragment key={index}>
          {OWN_FIELDS.map((name) => (
            <RigField key={name} path={`stocks[${index}].${name}`} />
          ))}
        </Fragment>
      ))}
      <OwnStock
        names={stocks.map(({ name, id }) => String(name ?? id))}
        onKeep={(stock) => edit("stocks", [...stocks, stock], sayRigSheet("rigSheet.ownMaterial"))}
      />
    </Group>
  );
}

const OWN_FIELDS = ["name", "fibre", "form", "strength", "basis", "mass"];

function QuickSlack() {
  const { history } = useSandbox((state) => state.document);
  const backup = (history.present.rig as { backup?: { slack?: unknown } }).backup;
  return backup?.slack === undefined ? null : (
    <RigField path="backup.slack" slider label={sayRigSheet("rigSheet.slackBackup")} />
  );
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
      title={
        <span className={styles.group}>
          <MarkedTitle title={title} groups={groups} />
        </span>
      }
      faults={faults}
      {...(open ? { defaultOpen: true } : {})}
    >
      <ConfirmAll groups={groups} />
      {children}
    </Disclosure>
  );
}
