/** `new`: begins a rig. Asks in a terminal; elsewhere takes answers from options. What nobody said is marked in the file. */
import { createInterface } from "node:readline/promises";
import { writeRig } from "@secondline/rig";
import { newRigWords } from "@secondline/words/newRig";
import { type Answers, type LengthUnit, reachDoubt, rigFrom } from "@secondline/workbench";
import { CommandFailure, EXIT } from "../failure.ts";
import { askAnswers } from "../newRig/askAnswers.ts";
import { givenAnswers, groundOf } from "../newRig/givenAnswers.ts";
import { checkOutFile, writeOutFile } from "../outFile.ts";
import { message, print, width } from "../terminal.ts";
import { bullets, wrap } from "../wrap.ts";

const { say } = newRigWords;

interface Options {
  readonly answers?: string;
  readonly set: readonly string[];
  readonly ground?: string;
  readonly groundUnit?: LengthUnit;
  readonly template?: boolean;
  readonly force?: boolean;
}

export async function newRig(file: string, options: Options): Promise<void> {
  const inputs = [options.answers, options.ground].filter((one) => one !== undefined);
  const out = checkOutFile(file, options.force === true, inputs);
  const ground = options.ground === undefined ? undefined : groundOf(options.ground, options.groundUnit);
  const given = {
    ...givenAnswers(options.answers, options.set),
    ...(ground ? { profile: ground.profile } : {}),
  };
  const isGiven = options.template || Object.keys(given).length > 0 || options.answers !== undefined;
  const answers = isGiven ? given : await askedAnswers();
  const { document, rig, unconfirmed, faults, doubts } = rigFrom(answers);
  if (!rig)
    throw new CommandFailure(
      EXIT.input,
      faults.map((fault) => `${nameOf(fault.place)}: ${newRigWords.fault(fault)}`),
    );
  writeOutFile(out, writeRig(document));
  print(say("cli.wrote", { file, name: rig.name }));
  const reach = ground && reachDoubt(ground.profile, ground.unit, rig.span);
  if (reach) print(wrap(say("cli.doubt", { answer: "profile", message: newRigWords.reachDoubt(reach) }), width));
  for (const { kind, place, values } of doubts) {
    print(wrap(say("cli.doubt", { answer: nameOf(place), message: say(`doubt.${kind}`, values) }), width));
  }
  if (unconfirmed.length > 0) {
    print(say("cli.notConfirmed", { count: unconfirmed.length }));
    print(bullets(newRigWords.values(rig, unconfirmed).split("; "), width).join("\n"));
  } else print(say("state.none"));
  print(wrap(say("cli.next", { file }), width));
}

/** Label of an answer; its name in the file if it has no other. */
function nameOf(place: ReturnType<typeof rigFrom>["faults"][number]["place"]): string {
  if (place === "rig" || place === "profile" || place === "stocks") return place;
  return `${place} (${say(`answer.${place}`)})`;
}

async function askedAnswers(): Promise<Answers> {
  if (!process.stdin.isTTY || !process.stderr.isTTY) throw new CommandFailure(EXIT.input, [say("cli.noTerminal")]);
  const lines = createInterface({ input: process.stdin, output: process.stderr });
  // Ctrl-C and the end of input both close the questions; then no file is written.
  const left = new Promise<undefined>((resolve) => lines.once("close", () => resolve(undefined)));
  lines.once("SIGINT", () => lines.close());
  try {
    const ask = (prompt: string) => Promise.race([lines.question(`  ${prompt}: `), left]);
    const answers = await askAnswers({ ask, tell: (text) => message(wrap(text, width)) });
    if (answers) return answers;
  } finally {
    lines.close();
  }
  throw new CommandFailure(EXIT.stopped, [say("cli.left")]);
}
