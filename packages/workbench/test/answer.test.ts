/** The answer under the question, and what is said aloud, are told from the run: who caught, and what gave way. */
import { editDocument } from "@secondline/rig";
import { InProcessRunner } from "@secondline/runner";
import type { WhatIf } from "@secondline/scenarios";
import { englishWords as words } from "@secondline/words";
import { expect, it } from "vitest";
import oldRig from "../../../demo-data/old-rig.json";
import { createSandbox } from "../src/inHand/sandbox.ts";
import { read } from "./demoDocument.ts";

/** The old rig with its main line weakened by own judgement. */
const weakened = editDocument(oldRig, "main.sections[0].own", { factor: 0.45, reason: "looks bad" });

async function answerTo(whatIf: WhatIf): Promise<string> {
  const services = {
    runner: new InProcessRunner(),
    read,
    newId: () => crypto.randomUUID(),
    later: () => () => undefined,
  };
  const start = { document: weakened, goodDocument: weakened, session: { whatIf } };
  const { store, actions } = createSandbox(services, start);
  actions.runNow();
  await expect.poll(() => store.getState().run.shown, { timeout: 60_000 }).toBeDefined();
  actions.stop();
  const { assessed, outcome } = store.getState().run.shown!;
  return words.story(assessed.rig, outcome).join(" ");
}

it("a main line that gives way in a leash fall is not said to have caught", async () => {
  const said = await answerTo({ kind: "leashFall", at: 0.5 });
  expect(said).toMatch(/^The backup caught you/);
  expect(said).toContain("Main line gave way");
});
