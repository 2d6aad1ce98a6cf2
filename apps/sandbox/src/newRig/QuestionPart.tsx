import { newRigWords } from "@secondline/words/newRig";
import { isAsked, type QUESTIONS } from "@secondline/workbench";
import { Button } from "../design/Button.tsx";
import { Tick } from "../design/Tick.tsx";
import { AnswerField } from "./AnswerField.tsx";
import styles from "./newRig.module.css";
import type { NewRigDesk } from "./useNewRig.ts";

const { say } = newRigWords;

/** One question: its answers, and the way to say that the template's are right. */
export function QuestionPart({ question, desk }: { question: (typeof QUESTIONS)[number]; desk: NewRigDesk }) {
  const { id } = question;
  const { answers } = desk;
  const confirmed = answers.confirmed?.includes(id) ?? false;
  const shown = question.answers.filter((one) => isAsked(one, answers));
  return (
    <section className={styles.question} aria-labelledby={`question-${id}`}>
      <h3 id={`question-${id}`} className={styles.title}>
        {say(`question.${id}`)}
      </h3>
      <p className={styles.help}>{say(`help.${id}`)}</p>
      <div className={styles.answers}>
        {shown.map((one) => (
          <AnswerField key={one} id={one} desk={desk} confirmed={confirmed} />
        ))}
      </div>
      {id === "age" ? (
        <Button label={say("allNew")} pressed={answers.age === "new"} onClick={() => desk.answer("age", "new")} />
      ) : (
        <Tick
          label={say("confirm")}
          hint={say("confirmOf", { question: say(`question.${id}`) })}
          checked={confirmed}
          onChange={(right) => desk.confirm(id, right)}
        />
      )}
    </section>
  );
}
