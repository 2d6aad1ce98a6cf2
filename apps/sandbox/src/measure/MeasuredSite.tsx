import { quantity } from "@secondline/words";
import { newRigWords } from "@secondline/words/newRig";
import {
  MEASURED_FIELDS,
  MEASURED_WAYS,
  type MeasuredField,
  type MeasuredReading,
  type MeasuredTexts,
  type MeasuredWay,
  readMeasured,
  SIDES,
} from "@secondline/workbench";
import { useState } from "react";
import { Button } from "../design/Button.tsx";
import { Choice } from "../design/Choice.tsx";
import { TextField } from "../design/TextField.tsx";
import styles from "./measure.module.css";

const { say } = newRigWords;

/** Span and rise from what was measured between the anchors: shown before they are taken over. */
export function MeasuredSite({
  onTake,
}: {
  onTake: (texts: { readonly span: string; readonly rise: string }) => void;
}) {
  const [way, setWay] = useState<MeasuredWay>(MEASURED_WAYS[0]);
  const [texts, setTexts] = useState<MeasuredTexts>({});
  const read = readMeasured(way, texts);
  const put = (at: MeasuredField, text: string) => setTexts({ ...texts, [at]: text });
  return (
    <div className={styles.measured}>
      <Choice
        label={say("measured.way")}
        value={way}
        options={MEASURED_WAYS.map((one) => ({ value: one, label: say(`measured.way.${one}`) }))}
        onChange={setWay}
      />
      <p className={styles.help}>{say(`measured.help.${way}`)}</p>
      {MEASURED_FIELDS[way].map((at) =>
        at === "side" ? (
          <Choice
            key={at}
            label={say("measured.side")}
            value={texts.side ?? SIDES[0]}
            options={SIDES.map((side) => ({ value: side, label: say(`measured.side.${side}`) }))}
            onChange={(side) => put("side", side)}
          />
        ) : (
          <TextField
            key={at}
            label={say(`measured.${at}`)}
            value={texts[at] ?? ""}
            placeholder={at === "angle" ? "4 deg" : "60 m"}
            onChange={(text) => put(at, text)}
            messages={read.ok ? [] : read.faults.filter((fault) => fault.at === at).map(newRigWords.measuredFault)}
          />
        ),
      )}
      <Result read={read} onTake={onTake} />
    </div>
  );
}

function Result({
  read,
  onTake,
}: {
  read: MeasuredReading;
  onTake: (texts: { readonly span: string; readonly rise: string }) => void;
}) {
  return (
    <>
      <div role="status">
        {read.ok && (
          <>
            <p className={styles.result}>{say("measured.result", read.texts)}</p>
            <p className={styles.help}>
              {quantity.unbroken(
                say("measured.error", { span: quantity.drop(read.error.span), rise: quantity.drop(read.error.rise) }),
              )}
            </p>
            {read.doubts.map((doubt) => (
              <p key={doubt} className={styles.doubt}>
                {say(`measured.doubt.${doubt}`)}
              </p>
            ))}
          </>
        )}
      </div>
      <Button label={say("measured.take")} disabled={!read.ok} onClick={() => read.ok && onTake(read.texts)} />
    </>
  );
}
