import { stocksIn } from "@secondline/rig";
import { newRigWords } from "@secondline/words/newRig";
import { ANSWERS, type AnswerId, answerOf, answerWay } from "@secondline/workbench";
import { Button } from "../design/Button.tsx";
import { Choice } from "../design/Choice.tsx";
import { TextField } from "../design/TextField.tsx";
import { StockChoice } from "../stocks/StockChoice.tsx";
import styles from "./newRig.module.css";
import type { NewRigInHand } from "./useNewRig.ts";

const { say } = newRigWords;
const HINTS: Readonly<Partial<Record<AnswerId, string>>> = {
  connections: say("hint.connections"),
  age: say("hint.age"),
};

interface Props {
  id: AnswerId;
  desk: NewRigInHand;
  /** Its question was said to be right as it stands. */
  confirmed: boolean;
}

/** One answer: what is typed or chosen, what is wrong or doubtful about it, and whether it is the template's. */
export function AnswerField({ id, desk, confirmed }: Props) {
  const { answers, made, answer } = desk;
  const faults = made.faults.filter(({ place }) => place === id);
  const doubts = made.doubts.filter(({ place }) => place === id);
  const value = answerOf(answers, id);
  const isTemplate = answers[id] === undefined && !confirmed && ANSWERS[id].start !== "" && id !== "name";
  const isDrawn = answers.drawn?.some((one) => one === id) ?? false;
  const shared = {
    label: say(`answer.${id}`),
    value,
    unconfirmed: isTemplate ? say("mark.template") : isDrawn && !confirmed ? say("mark.drawn") : undefined,
    onChange: (text: string) => answer(id, text),
  };
  const way = answerWay(id);
  const hint = HINTS[id];
  return (
    <div className={styles.answer}>
      {way.kind === "stock" ? (
        <StockChoice {...shared} own={stocksIn(made.document)} />
      ) : way.kind === "chosen" ? (
        <Choice {...shared} options={way.options} />
      ) : (
        <TextField
          {...shared}
          {...(hint === undefined ? {} : { hint })}
          {...(value === "" ? { placeholder: say("blank") } : {})}
          messages={faults.map(newRigWords.fault)}
          wide={id === "name" || id === "connections"}
        />
      )}
      {way.kind === "chosen" && faults.map(newRigWords.fault).map((text) => <p key={text}>{text}</p>)}
      {faults
        .flatMap(({ remedy }) => remedy ?? [])
        .map((remedy) => (
          <Button key={remedy} label={say("remedy", { remedy })} onClick={() => answer(id, remedy)} />
        ))}
      {doubts.map(({ kind, values }) => (
        <p key={kind} className={styles.doubt}>
          {say(`doubt.${kind}`, values)}
        </p>
      ))}
    </div>
  );
}
