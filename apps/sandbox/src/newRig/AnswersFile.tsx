import { tellFault } from "@secondline/words/faults";
import { newRigWords } from "@secondline/words/newRig";
import { answersText, fileName, readAnswers } from "@secondline/workbench";
import { useState } from "react";
import { Button } from "../design/Button.tsx";
import { chooseFile, RIG_FILES } from "../device/chooseFile.ts";
import { download } from "../device/download.ts";
import styles from "./newRig.module.css";
import type { NewRigInHand } from "./useNewRig.ts";

const { say } = newRigWords;

type OfDesk = { readonly desk: Pick<NewRigInHand, "answers" | "replace"> };

/** The answers as a file: for later, for another device, or for the terminal. */
export function SaveAnswers({ desk: { answers } }: OfDesk) {
  return (
    <Button
      icon="save"
      label={say("answers.save")}
      onClick={() =>
        download(
          answersText(answers),
          fileName([answers.name, say("answers.file")].filter((one) => one !== undefined).join(" "), "json"),
          "application/json",
        )
      }
    />
  );
}

/** Saves the answers so far, and opens saved ones; a file that cannot be read changes nothing. */
export function AnswersFile({ desk }: OfDesk) {
  const [told, setTold] = useState<{ readonly text: string; readonly isFault: boolean }>();
  async function open(file: File): Promise<void> {
    const text = await file.text().catch(() => undefined);
    const read = text === undefined ? undefined : readAnswers(text);
    if (read?.ok) desk.replace(read.answers);
    const why = read === undefined ? say("file.device") : read.ok ? "" : faultsOf(read.issues);
    setTold(
      read?.ok
        ? { text: say("answers.opened", { file: file.name }), isFault: false }
        : { text: say("answers.refused", { file: file.name, why }), isFault: true },
    );
  }
  return (
    <div className={styles.file}>
      <div className={styles.buttons}>
        <SaveAnswers desk={desk} />
        <Button icon="open" label={say("answers.open")} onClick={() => chooseFile(RIG_FILES, open)} />
      </div>
      <p role="status" className={told?.isFault ? styles.wrong : styles.help}>
        {told?.text}
      </p>
    </div>
  );
}

const faultsOf = (issues: Extract<ReturnType<typeof readAnswers>, { ok: false }>["issues"]): string =>
  issues.map(({ message }) => tellFault(message)).join(" ");
