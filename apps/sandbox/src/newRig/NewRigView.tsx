import { tellFault } from "@secondline/words/faults";
import { newRigWords } from "@secondline/words/newRig";
import { QUESTIONS, type SideView } from "@secondline/workbench";
import { useEffect } from "react";
import { Button } from "../design/Button.tsx";
import { Disclosure } from "../design/Disclosure.tsx";
import type { Theme } from "../design/palette.ts";
import type { FileActions } from "../files/useFileActions.ts";
import { type SideInHand, useSideDesk } from "../side/useSideDesk.ts";
import { useActions } from "../state/useSandbox.ts";
import { CautionFoot } from "../verdict/CautionFoot.tsx";
import { words } from "../words.ts";
import { AnswersFile, SaveAnswers } from "./AnswersFile.tsx";
import styles from "./newRig.module.css";
import { QuestionPart } from "./QuestionPart.tsx";
import { SidePicture } from "./SidePicture.tsx";
import { type NewRigInHand, useNewRig } from "./useNewRig.ts";
import { useSketch } from "./useSketch.ts";

const { say } = newRigWords;
const EMPTY_SIDE: SideView = { site: { span: 1, rise: 0 }, points: [], connections: [] };

/** Eight questions on one page, and the rig that follows from them growing beside it. */
export function NewRigView({ theme, openDocument }: { theme: Theme; openDocument: FileActions["openDocument"] }) {
  const desk = useNewRig();
  const { made, side } = desk;
  const sideDesk = useSideDesk(side ?? EMPTY_SIDE, desk.host);
  const hand: SideInHand | undefined = side && sideDesk;
  const sketched = useSketch(made.rig);
  const { look, stop, runNow } = useActions();
  // The threads are for the drawing; what the rig before still lacked is looked for when it is in sight again.
  useEffect(() => {
    stop();
    return runNow;
  }, [stop, runNow]);
  function make(): void {
    openDocument(made.document, say("title"));
    desk.reset();
    look({ view: "rig", rigOpen: true });
  }
  return (
    <div className={styles.view}>
      <div className={styles.body}>
        <main className={styles.questions}>
          <h2 className={styles.head}>{say("title")}</h2>
          <p className={styles.intro}>{say("intro")}</p>
          {QUESTIONS.map((question) => (
            <QuestionPart key={question.id} question={question} desk={desk} hand={hand} />
          ))}
          <Rest desk={desk} />
        </main>
        <aside className={styles.side} aria-label={say("result")}>
          <div className={styles.picture}>
            <SidePicture sketched={sketched} theme={theme} isOld={made.rig === undefined} hand={hand} />
          </div>
          <div className={styles.finish}>
            <State desk={desk} />
            {desk.unkept && (
              <p className={styles.unkept} role="alert">
                ✕ {say("unkept.all", { reason: desk.unkept.reason })}
              </p>
            )}
            <div className={styles.buttons}>
              <Button tone="filled" label={say("make")} disabled={made.rig === undefined} onClick={make} />
              {desk.unkept && <SaveAnswers desk={desk} />}
              <Button tone="quiet" label={say("cancel")} onClick={() => look({ view: "rig" })} />
            </div>
          </div>
        </aside>
      </div>
      <CautionFoot cautions={words.generalCautions()} />
    </div>
  );
}

/** How many values are not confirmed, or how many answers keep it from being a rig; told to who cannot see it too. */
function State({ desk: { made } }: { desk: NewRigInHand }) {
  const places = new Set(made.faults.map(({ place }) => place)).size;
  const text =
    places > 0
      ? say("state.faults", { count: places })
      : made.unconfirmed.length > 0
        ? say("state.good", { count: made.unconfirmed.length })
        : say("state.none");
  return (
    <p className={places > 0 ? styles.wrong : styles.state} role="status">
      {text}
    </p>
  );
}

/** What no question asks, and what is wrong with no single answer. */
function Rest({ desk }: { desk: NewRigInHand }) {
  const { made, reset, bringBack } = desk;
  const others = made.faults.flatMap((fault) =>
    ELSEWHERE.has(fault.place) && fault.kind === "issue" ? [fault.issue] : [],
  );
  const rest = made.unconfirmed.filter((path) => OTHER_FIELDS.test(path));
  return (
    <section className={styles.question}>
      {others.map(({ path, message }) => (
        <p key={path} className={styles.wrong}>
          {tellFault(message)}
        </p>
      ))}
      {made.rig && rest.length > 0 && (
        <Disclosure title={say("state.rest", { count: rest.length })}>
          <p className={styles.help}>{newRigWords.values(made.rig, rest)}.</p>
        </Disclosure>
      )}
      <AnswersFile desk={desk} />
      <Button tone="quiet" label={say("reset")} onClick={reset} />
      {bringBack && <Button tone="quiet" icon="undo" label={say("answers.back")} onClick={bringBack} />}
    </section>
  );
}

/** Places that no question shows. */
const ELSEWHERE: ReadonlySet<string> = new Set(["rig", "stocks"]);
const OTHER_FIELDS = /end[AB]\.|hardware|pullAngle|legLength|^rings|^harness/;
