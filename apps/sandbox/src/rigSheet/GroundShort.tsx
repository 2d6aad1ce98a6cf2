import { newRigWords } from "@secondline/words/newRig";
import { GROUND_SHAPES, lowestProfile, putGround } from "@secondline/workbench";
import { useState } from "react";
import { Button } from "../design/Button.tsx";
import { Choice } from "../design/Choice.tsx";
import { TextField } from "../design/TextField.tsx";
import { GroundFile } from "../newRig/GroundFile.tsx";
import { useContextOrThrow, useSandbox } from "../state/useSandbox.ts";
import styles from "./GroundFields.module.css";

const { say } = newRigWords;

/** The ground of one number, or from a file, in place of the points. */
export function GroundShort() {
  const { span, rise } = useSandbox((state) => state.document.rig);
  const sandbox = useContextOrThrow();
  const [lowest, setLowest] = useState("");
  const [spot, setSpot] = useState("middle");
  const [shape, setShape] = useState<string>(GROUND_SHAPES[0]);
  const read = lowestProfile(lowest, spot, shape, { span, rise });
  const wrong = (at: string) =>
    read.ok || read.at !== at || lowest === "" ? [] : [say(`fault.${read.kind}`, read.values)];
  // What lies between is a guess: whoever has looked at it confirms it.
  const make = () => read.ok && putGround(sandbox, read.profile, say("ground.step"), true);
  return (
    <div className={styles.short}>
      <TextField
        label={say("answer.lowest")}
        value={lowest}
        placeholder="25 m"
        onChange={setLowest}
        messages={wrong("lowest")}
      />
      <Choice
        label={say("answer.shape")}
        value={shape}
        options={GROUND_SHAPES.map((one) => ({ value: one, label: say(`shape.${one}`) }))}
        onChange={setShape}
      />
      {shape !== "walls" && (
        <TextField label={say("answer.lowestAt")} value={spot} onChange={setSpot} messages={wrong("lowestAt")} />
      )}
      <Button label={say("ground.make")} disabled={!read.ok} onClick={make} />
      <GroundFile span={span} onTake={(profile) => sandbox.actions.edit("ground", profile, say("ground.step"))} />
    </div>
  );
}
