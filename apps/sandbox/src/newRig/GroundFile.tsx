import { newRigWords } from "@secondline/words/newRig";
import { type LengthUnit, readProfile } from "@secondline/workbench";
import { useState } from "react";
import { Button } from "../design/Button.tsx";
import { chooseFile } from "../files/chooseFile.ts";
import styles from "./newRig.module.css";

const { say } = newRigWords;
const TABLES = ".csv,.tsv,.txt,text/csv";

type Profile = readonly (readonly [string, string])[];

/** Takes a ground profile from a table of distance and height; asks for the unit where the file does not say it. */
export function GroundFile({ onTake }: { onTake: (profile: Profile) => void }) {
  const [told, setTold] = useState("");
  const [asked, setAsked] = useState<{ readonly file: string; readonly text: string }>();

  function take(file: string, text: string, unit?: LengthUnit): void {
    const read = readProfile(text, unit);
    if (read.ok) {
      setAsked(undefined);
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
