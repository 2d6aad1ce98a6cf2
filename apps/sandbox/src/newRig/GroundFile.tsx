import { newRigWords } from "@secondline/words/newRig";
import { type LengthUnit, type ReachDoubt, reachDoubt, readProfile } from "@secondline/workbench";
import { useState } from "react";
import { Button } from "../design/Button.tsx";
import { chooseFile } from "../device/chooseFile.ts";
import styles from "./newRig.module.css";

const { say } = newRigWords;
const TABLES = ".csv,.tsv,.txt,text/csv";

type Profile = readonly (readonly [string, string])[];

interface Props {
  /** [m]; undefined while it cannot be read. */
  span: number | undefined;
  onTake: (profile: Profile) => void;
}

/** Takes a ground profile from a table of distance and height; asks for the unit where the file does not say it. */
export function GroundFile({ span, onTake }: Props) {
  const [told, setTold] = useState("");
  const [asked, setAsked] = useState<{ readonly file: string; readonly text: string }>();
  const [doubt, setDoubt] = useState<ReachDoubt>();

  function take(file: string, text: string, unit?: LengthUnit): void {
    const read = readProfile(text, unit);
    const odd = read.ok && span !== undefined ? reachDoubt(read.profile, read.unit, span) : undefined;
    setDoubt(odd);
    if (read.ok) {
      // Where nobody but a person said the unit, the other one is one step away.
      setAsked(odd?.unit !== undefined && unit !== undefined ? { file, text } : undefined);
      onTake(read.profile);
      setTold(say("ground.read", { file, count: read.profile.length, unit: say(`ground.${read.unit}`) }));
      return;
    }
    const others = read.faults.flatMap((one) => (one.kind === "unit" ? [] : [newRigWords.fileFault(one)]));
    setAsked(others.length === 0 ? { file, text } : undefined);
    setTold(others.length === 0 ? say("ground.unit", { file }) : say("file.unread", { file, why: others.join(" ") }));
  }
  async function open(file: File): Promise<void> {
    const text = await file.text().catch(() => undefined);
    if (text === undefined) setTold(say("file.unread", { file: file.name, why: say("file.device") }));
    else take(file.name, text);
  }
  return (
    <div className={styles.file}>
      <Button icon="open" label={say("ground.file")} onClick={() => chooseFile(TABLES, open)} />
      <p role="status" className={styles.help}>
        {told}
        {doubt && <span className={styles.doubt}> {newRigWords.reachDoubt(doubt)}</span>}
      </p>
      {asked && (
        <div className={styles.buttons}>
          <Button label={say("ground.metres")} onClick={() => take(asked.file, asked.text, "m")} />
          <Button label={say("ground.feet")} onClick={() => take(asked.file, asked.text, "ft")} />
        </div>
      )}
    </div>
  );
}
