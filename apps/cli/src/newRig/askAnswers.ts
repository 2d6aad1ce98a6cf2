/** Asks the questions of a new rig, one after the other. An answer that cannot be read is reported at once and asked again. */

import { fieldAt, GENERIC_STOCKS } from "@secondline/rig";
import { listed } from "@secondline/words";
import { newRigWords } from "@secondline/words/newRig";
import {
  ANSWERS,
  type AnswerId,
  type Answers,
  answerOf,
  GROUND_SHAPES,
  isAsked,
  QUESTIONS,
  rigFrom,
} from "@secondline/workbench";
import { askMeasured } from "./askMeasured.ts";

const { say } = newRigWords;
/** Answer that is typed instead of a span. */
const MEASURED_ANSWER = "measured";

export interface Desk {
  /** Undefined: the user has left. */
  readonly ask: (prompt: string) => Promise<string | undefined>;
  readonly tell: (text: string) => void;
}

/** Undefined when somebody left before the end. */
export async function askAnswers({ ask, tell }: Desk, begun: Answers = {}): Promise<Answers | undefined> {
  tell(say("intro"));
  tell(say("cli.how"));
  let answers = begun;
  for (const question of QUESTIONS) {
    tell("");
    tell(say(`question.${question.id}`));
    tell(say(`help.${question.id}`));
    if (question.id === "site") tell(say("cli.measured"));
    for (const id of question.answers) {
      if (answers[id] !== undefined || !isAsked(id, answers)) continue;
      const next = await askOne(id, answers, { ask, tell });
      if (next === undefined) return undefined;
      answers = next;
    }
  }
  return answers;
}

async function askOne(id: AnswerId, answers: Answers, { ask, tell }: Desk): Promise<Answers | undefined> {
  const start = answerOf(answers, id);
  const options = optionsOf(id);
  if (options.length > 0) tell(say("cli.options", { options: listed(options) }));
  for (;;) {
    const prompt = say("cli.ask", { answer: say(`answer.${id}`), start: start === "" ? say("blank") : start });
    const text = (await ask(prompt))?.trim();
    if (text === undefined) return undefined;
    if (text === "") return answers;
    if (id === "span" && text.toLowerCase() === MEASURED_ANSWER) {
      const measured = await askMeasured({ ask, tell });
      if (measured === undefined) return undefined;
      if (measured === "back") continue;
      return { ...answers, ...measured };
    }
    const next = { ...answers, [id]: text.toLowerCase() === "ok" && ANSWERS[id].start !== "" ? start : text };
    const [fault] = rigFrom(next).faults.filter(({ place }) => place === id);
    if (!fault) return next;
    const remedy = fault.remedy === undefined ? "" : say("cli.remedy", { remedy: fault.remedy });
    tell(say("cli.again", { message: newRigWords.fault(fault), remedy }));
  }
}

/** The choices; none if any text may be typed. */
function optionsOf(id: AnswerId): readonly string[] {
  const answer = ANSWERS[id];
  if (answer.kind === "shape") return GROUND_SHAPES;
  const field = answer.kind === "field" ? fieldAt(answer.field) : undefined;
  if (field?.kind === "choice") return field.options.map(({ value }) => value);
  return field?.kind === "stock" ? [...GENERIC_STOCKS.keys()] : [];
}
