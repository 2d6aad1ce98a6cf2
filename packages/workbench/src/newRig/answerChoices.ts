/** Whether an answer is typed, chosen of a few, or a webbing or rope. */
import { spokenField } from "@secondline/words/fields";
import { newRigWords } from "@secondline/words/newRig";
import { GROUND_SHAPES } from "../ground/lowest.ts";
import { ANSWERS, type AnswerId } from "./answers.ts";

const { say } = newRigWords;

export type AnswerWay =
  | { readonly kind: "typed" | "stock" }
  | { readonly kind: "chosen"; readonly options: readonly { readonly value: string; readonly label: string }[] };

export function answerWay(id: AnswerId): AnswerWay {
  const answer = ANSWERS[id];
  switch (answer.kind) {
    case "yesNo":
      return { kind: "chosen", options: (["yes", "no"] as const).map((value) => ({ value, label: say(value) })) };
    case "shape":
      return { kind: "chosen", options: GROUND_SHAPES.map((value) => ({ value, label: say(`shape.${value}`) })) };
    case "field": {
      const field = spokenField(answer.field);
      if (field?.kind === "stock") return { kind: "stock" };
      if (field?.kind !== "choice") return { kind: "typed" };
      const unsaid = id === "latitude" ? [{ value: "", label: say("unsaid.latitude") }] : [];
      return { kind: "chosen", options: [...unsaid, ...field.options] };
    }
    default:
      return { kind: "typed" };
  }
}
