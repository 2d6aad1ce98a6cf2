/**
 * Asks for the values measured between the anchors and works out span and rise. The user sees both before they are taken over.
 */

import { listed, quantity } from "@secondline/words";
import { newRigWords } from "@secondline/words/newRig";
import {
  MEASURED_FIELDS,
  MEASURED_WAYS,
  type MeasuredField,
  type MeasuredTexts,
  type MeasuredWay,
  readMeasured,
  SIDES,
} from "@secondline/workbench";
import type { Desk } from "./askAnswers.ts";

const { say } = newRigWords;

export interface MeasuredSpan {
  readonly span: string;
  readonly rise: string;
}

/** `back`: the user did not take the values over. Undefined: the user has left. */
export async function askMeasured(desk: Desk): Promise<MeasuredSpan | "back" | undefined> {
  const { tell } = desk;
  for (const one of MEASURED_WAYS) tell(`${one}: ${say(`measured.way.${one}`)}. ${say(`measured.help.${one}`)}`);
  const way = await askOneOf(MEASURED_WAYS, say("measured.way"), desk);
  if (way === undefined) return undefined;
  const texts = await askFields(way, desk);
  if (texts === undefined) return undefined;
  const read = readMeasured(way, texts);
  if (!read.ok) {
    for (const fault of read.faults) tell(newRigWords.measuredFault(fault));
    return "back";
  }
  tell(say("measured.result", read.texts));
  tell(say("measured.error", { span: quantity.drop(read.error.span), rise: quantity.drop(read.error.rise) }));
  for (const doubt of read.doubts) tell(say(`measured.doubt.${doubt}`));
  const taken = await askOneOf(["yes", "no"], say("measured.take"), desk);
  if (taken === undefined) return undefined;
  return taken === "yes" ? read.texts : "back";
}

async function askFields(way: MeasuredWay, desk: Desk): Promise<MeasuredTexts | undefined> {
  let texts: MeasuredTexts = {};
  for (const at of MEASURED_FIELDS[way]) {
    const next =
      at === "side" ? await askOneOf(SIDES, say("measured.side"), desk) : await askField(at, way, texts, desk);
    if (next === undefined) return undefined;
    texts = { ...texts, [at]: next };
  }
  return texts;
}

type Typed = Exclude<MeasuredField, "side">;

/** Asks again until the answer can be read and fits the answers before it. */
async function askField(at: Typed, way: MeasuredWay, before: MeasuredTexts, { ask, tell }: Desk) {
  for (;;) {
    const text = (await ask(say(`measured.${at}`)))?.trim();
    if (text === undefined) return undefined;
    if (text === "") continue;
    const read = readMeasured(way, { ...before, [at]: text });
    const fault = read.ok ? undefined : read.faults.find((one) => one.at === at || !(one.at in before));
    if (!fault) return text;
    tell(newRigWords.measuredFault(fault));
  }
}

/** The first choice, if nothing is typed. */
async function askOneOf<T extends string>(options: readonly T[], label: string, { ask, tell }: Desk) {
  for (;;) {
    const text = (await ask(say("cli.ask", { answer: label, start: options[0]! })))?.trim().toLowerCase();
    if (text === undefined) return undefined;
    const chosen = text === "" ? options[0] : options.find((one) => one === text);
    if (chosen) return chosen;
    tell(say("cli.options", { options: listed(options) }));
  }
}
