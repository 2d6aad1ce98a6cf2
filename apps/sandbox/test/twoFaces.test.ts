/** Two faces, one truth: what the terminal prints as data and what the page's store holds, of the same rig and all that is known of it. */
import { InProcessRunner } from "@secondline/runner";
import type { Outcome } from "@secondline/scenarios";
import { englishWords as words } from "@secondline/words";
import { createSandbox, type Sandbox, type Services, type WrittenRig } from "@secondline/workbench";
import { beforeAll, describe, expect, it } from "vitest";
import { demoDocument, read } from "../../../packages/workbench/test/demoDocument.ts";
import { jsonText } from "../../cli/src/jsonText.ts";
import { command, demo } from "../../cli/test/support/command.ts";
import { exampleLog, tellKnown } from "../src/wearInHand/work.ts";

/** The day of the state. */
const ON = "2026-11-01";

interface Case {
  readonly rig: string;
  /** What the terminal is given besides the rig; the page is shown the same. */
  readonly options: readonly string[];
  /** The log is opened by hand: beside a rig that the example does not speak of, it counts only then. */
  readonly opensLog?: boolean;
}
const TESTS = ["--tests", demo("break-log.csv")];
const CASES: readonly Case[] = [
  { rig: "sound-rig.json", options: [] },
  { rig: "loose-backup.json", options: [] },
  { rig: "old-rig.json", options: ["--wear", demo("old-rig-wear.json"), "--on", ON, ...TESTS] },
  { rig: "sound-rig.json", options: TESTS, opensLog: true },
];

let terminal: Awaited<ReturnType<typeof command>>;
beforeAll(async () => {
  terminal = await command();
});

/** The page's store after its quick look; the whole search, which follows, is never answered. */
async function quickLook({ rig, opensLog }: Case): Promise<Sandbox> {
  const runner = new InProcessRunner();
  const services: Services = {
    runner: {
      run: (request, onProgress) => runner.run(request, onProgress),
      study: (request, onProgress) =>
        request.size === "quick" ? runner.study(request, onProgress) : new Promise(() => undefined),
      cancel: async () => undefined,
    },
    read,
    newId: () => crypto.randomUUID(),
    later: () => () => undefined,
  };
  const document: WrittenRig = demoDocument(rig);
  const sandbox = createSandbox(services, { document, goodDocument: document });
  const { actions } = tellKnown(sandbox);
  actions.look({ on: ON });
  if (opensLog) actions.replace({ log: exampleLog() }, "opened the example break log");
  sandbox.actions.runNow();
  await new Promise<void>((resolve) => {
    sandbox.store.subscribe(({ run }) => run.effort === "full" && resolve());
  });
  return sandbox;
}

/** As the terminal writes data: facts as their sentences, nothing that is undefined. */
const asData = (value: unknown): unknown => JSON.parse(jsonText(value));

describe.each(CASES)("$rig $options", (one) => {
  it("is judged alike by the terminal and on the page", async () => {
    const set = ["--set", "quick", "--accuracy", "quick", "--jobs", "1", "--json"];
    const { out, err, status } = await terminal("check", demo(one.rig), ...one.options, ...set);
    expect(err + status).toBe("0");
    const { sentence, words: told, outlook: _, ...outcome } = JSON.parse(out) as Outcome & Record<string, unknown>;
    const { store } = await quickLook(one);
    const { run, assessment } = store.getState();
    const soFar = run.verdict.soFar!;
    expect(asData(soFar)).toEqual(outcome);
    const { rig } = assessment.assessed;
    expect(words.verdict(rig, soFar)).toBe(sentence);
    expect(told).toMatchObject({
      taken: words.taken(rig, soFar),
      reasons: soFar.reasons.map((reason) => words.reason(rig, soFar, reason)),
      singles: words.singles(rig, soFar),
    });
    // Two quick looks: a bound for a busy machine.
  }, 180_000);
});
