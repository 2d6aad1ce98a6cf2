/** What can be and seldom is: a slipped decimal, a mistaken unit, a gap between connections that shares nothing. */
import { fieldAt, parseQuantity, quantityText, type Rig } from "@secondline/rig";
import { ANSWER_IDS, ANSWERS, type Answers } from "./answers.ts";
import type { AnswerDoubt } from "./fault.ts";

/** A main line tensioned above this share of its strength is unusual [-]; common practice, no source. */
const HIGH_TENSION_SHARE = 0.25;
/** Connections farther apart than this leave long loops of backup [m]; common practice, no source. */
const WIDE_GAP = 30;

/** `rig`: the one that follows from the answers. */
export function answerDoubts(answers: Answers, rig: Rig): readonly AnswerDoubt[] {
  return [...unusual(answers), ...tension(rig), ...backup(rig), ...outside(answers)];
}

/** Values outside the range that is usual for their field. */
function unusual(answers: Answers): readonly AnswerDoubt[] {
  return ANSWER_IDS.flatMap((place): readonly AnswerDoubt[] => {
    const [answer, text] = [ANSWERS[place], answers[place]];
    const field = answer.kind === "field" ? fieldAt(answer.field) : undefined;
    if (text === undefined || field?.kind !== "quantity" || !field.natural) return [];
    const read = parseQuantity(text, field.dimension);
    const [low, high] = field.natural;
    if (!read.ok || (read.value >= low && read.value <= high)) return [];
    const said = (value: number) => quantityText(value, field.dimension, text, 3);
    return [{ kind: "unusual", place, values: { got: text, low: said(low), high: said(high) } }];
  });
}

function tension({ main }: Rig): readonly AnswerDoubt[] {
  const strength = Math.min(...main.sections.map(({ stock }) => stock.rated.strength));
  if (main.pretension <= HIGH_TENSION_SHARE * strength) return [];
  const share = Math.ceil((100 * main.pretension) / strength);
  return [{ kind: "tensionHigh", place: "tension", values: { share } }];
}

function backup({ backup, span }: Rig): readonly AnswerDoubt[] {
  if (!backup) return [{ kind: "noBackup", place: "backup", values: {} }];
  const places = [0, ...backup.connections.map(({ at }) => at * span), span];
  const gap = Math.max(...places.slice(1).map((place, i) => place - places[i]!));
  return gap > WIDE_GAP ? [{ kind: "wideGap", place: "connections", values: { gap: Math.ceil(gap) } }] : [];
}

/** The rig takes nothing for younger than its time outside; whoever answers so is asked. */
function outside({ age, outside }: Answers): readonly AnswerDoubt[] {
  const [years, months] = [age, outside].map((text) => (text === undefined ? undefined : parseQuantity(text, "time")));
  if (!years?.ok || !months?.ok || months.value <= years.value * (1 + 1e-9)) return [];
  return [{ kind: "olderOutside", place: "outside", values: {} }];
}
