import { quantity } from "@secondline/words";
import { newRigWords } from "@secondline/words/newRig";
import { LEG_FIELDS, type LegField, readLegs } from "@secondline/workbench";
import { useState } from "react";
import { Button } from "../design/Button.tsx";
import { TextField } from "../design/TextField.tsx";
import styles from "./measure.module.css";

const { say } = newRigWords;

/** The angle between the legs of an anchor from three lengths: shown before it is taken over. */
export function MeasuredLegs({ onTake }: { onTake: (angle: string) => void }) {
  const [texts, setTexts] = useState<Readonly<Partial<Record<LegField, string>>>>({});
  const read = readLegs(texts);
  return (
    <div className={styles.measured}>
      <p className={styles.help}>{say("legs.help")}</p>
      {LEG_FIELDS.map((at) => (
        <TextField
          key={at}
          label={say(`legs.${at}`)}
          value={texts[at] ?? ""}
          placeholder="1.2 m"
          onChange={(text) => setTexts({ ...texts, [at]: text })}
          messages={read.ok ? [] : read.faults.filter((fault) => fault.at === at).map(newRigWords.measuredFault)}
        />
      ))}
      <div role="status">
        {read.ok && (
          <p className={styles.result}>
            {say("legs.result", { angle: read.text, share: quantity.percent(read.share, "up") })}
          </p>
        )}
      </div>
      <Button label={say("legs.take")} disabled={!read.ok} onClick={() => read.ok && onTake(read.text)} />
    </div>
  );
}
