import { newRigWords } from "@secondline/words/newRig";
import { sayRigSheet } from "@secondline/words/page/rigSheet";
import { readPlaces, shareAt } from "@secondline/workbench";
import { useState } from "react";
import { Button } from "../design/Button.tsx";
import { TextField } from "../design/TextField.tsx";
import { useSandbox } from "../state/useSandbox.ts";
import styles from "./BackupFields.module.css";

const { say } = newRigWords;

interface Props {
  parts: "connections" | "tapes";
  /** Shares of the line's length [-]. */
  onPlaces: (places: readonly number[]) => void;
}

/** Where connections are, in metres: "every 15 m", "10 m, 25 m". */
export function PlacesField({ parts, onPlaces }: Props) {
  const span = useSandbox((state) => state.document.rig.span);
  const [text, setText] = useState("");
  const read = readPlaces(text, span);
  const typed = text.trim() !== "";
  return (
    <div className={styles.places}>
      <TextField
        label={sayRigSheet(`backupFields.${parts}.where`)}
        value={text}
        placeholder="every 15 m"
        onChange={setText}
        messages={read.ok ? [] : [say(`fault.${read.kind}`, read.values)]}
        wide
      />
      <Button
        label={sayRigSheet(`backupFields.${parts}.set`, { count: read.ok && typed ? read.metres.length : 0 })}
        disabled={!read.ok || !typed}
        onClick={() => read.ok && onPlaces(read.metres.map((at) => shareAt(at, span)))}
      />
    </div>
  );
}
