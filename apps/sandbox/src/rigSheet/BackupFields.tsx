import { valueAt } from "@secondline/rig";
import { sayRigSheet } from "@secondline/words/page/rigSheet";
import {
  backupLikeMain,
  evenPlaces,
  jointList,
  lineItems,
  MOST_CONNECTIONS,
  spreadJoints,
  withSlackOrLength,
} from "@secondline/workbench";
import { Button } from "../design/Button.tsx";
import { Choice } from "../design/Choice.tsx";
import { Paragraphs } from "../design/Lines.tsx";
import { useActions, useContextOrThrow, useSandbox } from "../state/useSandbox.ts";
import styles from "./BackupFields.module.css";
import { useFaultsAt } from "./faults.ts";
import { Items } from "./Items.tsx";
import { useAddPart } from "./Marks.tsx";
import { PlacesField } from "./PlacesField.tsx";
import { RigField } from "./RigField.tsx";
import { SideDrawing } from "./SideDrawing.tsx";

const BACKUP_ITEMS = lineItems("backup");

/** The backup, or the way to add one. */
export function BackupFields() {
  const document = useSandbox((state) => state.document.history.present.rig);
  const { edit } = useActions();
  const add = useAddPart();
  const messages = useFaultsAt("backup");
  if (valueAt(document, "backup") === undefined) {
    return (
      <>
        <p>{sayRigSheet("backupFields.none")}</p>
        <Button
          icon="plus"
          label={sayRigSheet("backupFields.addBackup")}
          onClick={() => {
            const value = backupLikeMain(document);
            const label = sayRigSheet("backupFields.backupAdded");
            add({ at: "backup", part: value, whole: { path: "backup", value }, label });
          }}
        />
      </>
    );
  }
  return (
    <>
      <Paragraphs of={messages} className={styles.wrong} />
      <SlackOrLength />
      <Items of={BACKUP_ITEMS} />
      <Button
        tone="quiet"
        icon="bin"
        label={sayRigSheet("backupFields.removeBackup")}
        onClick={() => edit("backup", undefined, sayRigSheet("backupFields.backupRemoved"))}
      />
    </>
  );
}

/** The document holds one of the two. */
function SlackOrLength() {
  const byLength = useSandbox((state) => valueAt(state.document.history.present.rig, "backup.length") !== undefined);
  const backup = useSandbox((state) => valueAt(state.document.history.present.rig, "backup")) as Record<
    string,
    unknown
  >;
  const span = useSandbox((state) => state.document.rig.span);
  const { edit } = useActions();
  function choose(way: "slack" | "length") {
    edit("backup", withSlackOrLength(backup, way, span), sayRigSheet("backupFields.slackOrLength"));
  }
  return (
    <>
      <Choice
        label={sayRigSheet("backupFields.given")}
        value={byLength ? "length" : "slack"}
        options={[
          { value: "slack", label: sayRigSheet("backupFields.slack") },
          { value: "length", label: sayRigSheet("backupFields.length") },
        ]}
        onChange={choose}
      />
      {byLength ? <RigField path="backup.length" help /> : <RigField path="backup.slack" slider help />}
    </>
  );
}

/** Connections and tapes between main line and backup, with a quick way to spread them evenly. */
export function JointFields() {
  const hasBackup = useSandbox((state) => valueAt(state.document.history.present.rig, "backup") !== undefined);
  if (!hasBackup) return <p>{sayRigSheet("backupFields.needBackup")}</p>;
  return (
    <>
      <SideDrawing grip="connection" />
      <Joints parts="connections" />
      <Joints parts="tapes" />
    </>
  );
}

type Joint = "connections" | "tapes";

function Joints({ parts }: { parts: Joint }) {
  const { span } = useSandbox((state) => state.document.rig);
  const other = parts === "tapes" ? "connections" : "tapes";
  const others = useSandbox((state) => valueAt(state.document.history.present.rig, `backup.${other}`));
  return (
    <>
      <Spread parts={parts} />
      <Items of={[jointList(parts, span, others)]} />
    </>
  );
}

/** Sets how many there are, evenly over the span, all like the first. */
function Spread({ parts }: { parts: Joint }) {
  const at = `backup.${parts}`;
  const value = useSandbox((state) => valueAt(state.document.history.present.rig, at));
  const items: readonly unknown[] = Array.isArray(value) ? value : [];
  const sandbox = useContextOrThrow();
  const put = (places: readonly number[]) => spreadJoints(sandbox, parts, places);
  const set = (count: number) => put(evenPlaces(count));
  return (
    <>
      <div className={styles.spread}>
        <span id={`spread-${parts}`}>{sayRigSheet(`backupFields.${parts}.spread`)}</span>
        <Button
          icon="minus"
          iconOnly
          label={sayRigSheet(`backupFields.${parts}.fewer`)}
          disabled={items.length === 0}
          onClick={() => set(items.length - 1)}
        />
        <output className={styles.count} aria-labelledby={`spread-${parts}`}>
          {items.length}
        </output>
        <Button
          icon="plus"
          iconOnly
          label={sayRigSheet(`backupFields.${parts}.more`)}
          disabled={items.length >= MOST_CONNECTIONS}
          onClick={() => set(items.length + 1)}
        />
      </div>
      <PlacesField parts={parts} onPlaces={put} />
    </>
  );
}
