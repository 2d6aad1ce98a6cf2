import { newRigWords } from "@secondline/words/newRig";
import { isAsked, type QUESTIONS, type QuestionId } from "@secondline/workbench";
import { Button } from "../design/Button.tsx";
import { Tick } from "../design/Tick.tsx";
import { OwnStock } from "../stocks/OwnStock.tsx";
import { AnswerField } from "./AnswerField.tsx";
import { GroundFile } from "./GroundFile.tsx";
import styles from "./newRig.module.css";
import type { NewRigDesk } from "./useNewRig.ts";

const { say } = newRigWords;

/** One question: its answers, and the way to say that the template's are right. */
export function QuestionPart({ question, desk }: { question: (typeof QUESTIONS)[number]; desk: NewRigDesk }) {
  const { id } = question;
  const { answers } = desk;
  const confirmed = answers.confirmed?.includes(id) ?? false;
  const shown = question.answers.filter((one) => isAsked(one, answers));
  const { profile } = answers;
  return (
    <section className={styles.question} aria-labelledby={`question-${id}`}>
      <h3 id={`question-${id}`} className={styles.title}>
        {say(`question.${id}`)}
      </h3>
      <p className={styles.help}>
        {id === "ground" && profile ? say("help.profile", { count: profile.length }) : say(`help.${id}`)}
      </p>
      <div className={styles.answers}>
        {shown.map((one) => (
          <AnswerField key={one} id={one} desk={desk} confirmed={confirmed} />
        ))}
      </div>
      <More id={id} desk={desk} />
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

/** What a question offers besides its answers: a webbing of one's own, the ground from a file. */
function More({ id, desk }: { id: QuestionId; desk: NewRigDesk }) {
  const { answers, change } = desk;
  const stocks = answers.stocks ?? [];
  if (id === "main") {
    return (
      <OwnStock
        names={stocks.map((stock) => String(stock.name ?? stock.id))}
        onKeep={(stock) => change({ ...answers, stocks: [...stocks, stock], webbing: stock.id })}
      />
    );
  }
  if (id !== "ground") return null;
  const { profile, ...others } = answers;
  return (
    <>
      <GroundFile onTake={(next) => change({ ...answers, profile: next.map(([x, z]) => [x, z]) })} />
      {profile && <Button tone="quiet" label={say("ground.drop")} onClick={() => change(others)} />}
    </>
  );
}
