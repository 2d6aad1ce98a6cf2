/** Whole ways through the app without a page: through the store that the page uses, with runs that are really made, but few. */

import { confirm, marksIn } from "@secondline/rig";
import { InProcessRunner, type SweepRequest } from "@secondline/runner";
import { inputHash, isTurned, type Knob, type Swept } from "@secondline/scenarios";
import { expect, it } from "vitest";
import {
  type Answers,
  candidatesOf,
  createLayouts,
  createSandbox,
  foundOf,
  HowFarDesk,
  outcomeOf,
  QUESTIONS,
  readLogTable,
  readMatched,
  rigFrom,
  type Sandbox,
  type Services,
  suggestMatch,
  takeDownOutlook,
  withAnswer,
} from "../src/index.ts";
import { demoDocument, read } from "./demoDocument.ts";
import { withWear } from "./exampleWear.ts";

const made = new InProcessRunner();

/** Of every search two what-ifs are looked at, on a coarse mesh: enough to see that each answer belongs to its rig. */
const EVENTS = [
  { kind: "mainFails", at: 0.5, cutAt: 0, walker: "hanging" },
  { kind: "leashFall", at: 0.5 },
] as const;

let count = 0;
const services: Services = {
  runner: {
    run: (request, onProgress) => made.run({ ...request, accuracy: "quick" }, onProgress),
    study: ({ id, assessed }, onProgress) =>
      made.study({ id, assessed, whatIfs: EVENTS, accuracy: "quick" }, onProgress),
    cancel: (id) => made.cancel(id),
  },
  read,
  newId: () => `${++count}`,
  later(_, action) {
    const timer = setTimeout(action);
    return () => clearTimeout(timer);
  },
};

/** The search for the verdict of the current state has come to its end. */
function searched({ store }: Sandbox): Promise<void> {
  return new Promise((resolve, reject) => {
    const look = () => {
      const { study } = store.getState().run;
      if (study.kind === "failed") reject(new Error(study.message));
      if (study.kind !== "done" && foundOf(store.getState()) === undefined) return;
      end();
      resolve();
    };
    const end = store.subscribe(look);
    look();
  });
}

const unconfirmed = ({ store }: Sandbox) =>
  outcomeOf(store.getState())?.reasons.find(({ kind }) => kind === "unconfirmed");

it("a newcomer comes to a verdict of an own rig, which counts what nobody confirmed until somebody does", async () => {
  const demo = demoDocument();
  const sandbox = createSandbox(services, { document: demo, goodDocument: demo });
  let answers: Answers = {};
  for (const [id, text] of [
    ["name", "Quarry line"],
    ["span", "62 m"],
    ["lowest", "40 m"],
    ["mass", "85 kg"],
  ] as const)
    answers = withAnswer(answers, id, text);
  const begun = rigFrom(answers);
  sandbox.actions.replaceRig(begun.document, "New rig");
  await searched(sandbox);
  const { document, assessment, run } = sandbox.store.getState();
  expect(document.rig).toMatchObject({ name: "Quarry line", span: 62 });
  expect(run.shown?.key).toBe(assessment.key);
  const outcome = outcomeOf(sandbox.store.getState())!;
  expect(["thin", "fails"]).toContain(outcome.verdict);
  expect(unconfirmed(sandbox)).toMatchObject({ paths: document.rig.unconfirmed });

  // What no question asks about stays marked, until somebody says in the sheet that it is right.
  const answered = rigFrom({ ...answers, confirmed: QUESTIONS.map(({ id }) => id) });
  sandbox.actions.replaceRig(answered.document, "New rig");
  const rest = marksIn(answered.document);
  expect(rest.length).toBeGreaterThan(0);
  expect(rest.length).toBeLessThan(document.rig.unconfirmed!.length);
  sandbox.actions.change((before) => confirm(before, rest), "All values confirmed");
  expect(outcomeOf(sandbox.store.getState())).toBeUndefined();
  await searched(sandbox);
  expect(sandbox.store.getState().document.rig.unconfirmed).toBeUndefined();
  expect(unconfirmed(sandbox)).toBeUndefined();

  // Two steps back: what was found of the rig before is there at once.
  sandbox.actions.undo();
  sandbox.actions.undo();
  expect(outcomeOf(sandbox.store.getState())).toBe(outcome);
  sandbox.actions.undo();
  expect(sandbox.store.getState().document.rig.name).toBe(demo.name);
  sandbox.actions.stop();
});

/** As if a margin of 3 fell by a fifth with every percent of slack, known to a tenth. */
function sweptOf({ knobs, rigs }: SweepRequest): Swept {
  const [knob] = knobs as readonly [Knob];
  const points = rigs.map(({ values, change }) => {
    const margin = 3 - 20 * (values[0]! - knob.from);
    return { values, change, curve: { value: margin, low: margin - 0.1, high: margin + 0.1 }, runs: 8 };
  });
  const limit = { kind: "required", value: 2 };
  const crossing = { limit, kept: "below", at: knob.from + 0.05, low: knob.from + 0.045, high: knob.from + 0.055 };
  return { knobs, what: { kind: "margin" }, points, limits: [{ limit, crossings: [crossing] }] } as unknown as Swept;
}

it("a planner goes from the verdict to the loosest backup that holds, and takes it as a layout beside the rig", async () => {
  expect(isTurned({ kind: "margin" })).toBe(true);
  const document = demoDocument();
  const inHand = createSandbox(services, { document, goodDocument: document });
  inHand.actions.runNow();
  await searched(inHand);
  const layouts = createLayouts(inHand, services);
  const desk = new HowFarDesk(
    inHand,
    {
      sweep: async (request) => ({ ok: true, value: { kind: "swept", swept: sweptOf(request) } }),
      cancel: async () => undefined,
    },
    services.newId,
  );
  desk.about(undefined, "loosest");
  desk.ask({ points: "3" });
  expect(await desk.start()).toBe(true);
  const { found } = desk.store.getState();
  const [candidate] = candidatesOf(found!.swept);
  const [knob] = found!.swept.knobs;
  expect(candidate).toMatchObject({ edge: "most" });
  expect(candidate!.value).toBeLessThanOrEqual(knob!.from + 0.045);
  const loose = desk.documentAt([candidate!.value])!;
  const layout = layouts.add({ document: loose, goodDocument: loose })!.sandbox;
  await searched(layout);
  const [was, is] = [inHand, layout].map(({ store }) => store.getState());
  expect(is!.document.rig.backup).not.toEqual(was!.document.rig.backup);
  expect(is!.session.whatIf).toBe(was!.session.whatIf);
  expect(foundOf(is!)!.outcome).not.toEqual(foundOf(was!)!.outcome);
  // A few what-ifs are no whole search: no layout is said to hold.
  expect(foundOf(is!)!.outcome.verdict).not.toBe("holds");
  expect(layouts.written()).toEqual([{ document: loose, goodDocument: loose }]);
  // The open rig takes the value over; the sweep is of the rig before, and opens no value any more.
  inHand.actions.replaceRig(loose, "took layout B");
  expect(desk.canOpen()).toBe(false);
  await searched(inHand);
  inHand.actions.undo();
  expect(desk.canOpen()).toBe(true);
});

/** As a spreadsheet of somebody's saves it. */
const OWN = `Test date;Webbing;Piece;Condition;Max load (lbf);Ended;Moisture
04.07.2026;polyester-webbing-25;webbing;used;5170;Break;dry
05.07.2026;polyester-webbing-25;webbing;used;4990;Break;dry
05.07.2026;polyester-webbing-25;webbing;used;5240;Break;dry
06.07.2026;polyester-webbing-25;webbing;used;5085;Break;dry
`;

it("a keeper goes from a spreadsheet of break tests to the day until which the line may stay up", async () => {
  const document = demoDocument("old-rig.json");
  const sandbox = createSandbox(services, { document, goodDocument: document });
  const wear = withWear(sandbox);
  wear.actions.look({ on: "2026-11-10" });
  const table = readLogTable(OWN);
  if (!table.ok) throw new Error(table.fault.kind);
  const match = { ...suggestMatch(table.table), dates: "dmy" as const };
  const log = readMatched(table.table, {
    ...match,
    columns: { ...match.columns, wet: { column: "Moisture" } },
    words: { ...match.words, outcome: [{ text: "Break", means: "broke" }] },
  });
  if (!log.ok) throw new Error(JSON.stringify(log.faults));
  wear.actions.replace({ log: { name: "Own tests", invented: false, tests: log.tests } }, "opened own.csv");
  const { assessment } = sandbox.store.getState();
  expect(assessment.assessed.taken).toMatchObject({ on: "2026-11-10", tests: { given: 4 } });
  await searched(sandbox);
  const found = foundOf(sandbox.store.getState())!;
  const { good, on } = wear.store.getState();
  const outlook = takeDownOutlook({
    rig: sandbox.store.getState().document.rig,
    record: good.written,
    on,
    tests: assessment.assessed.tests,
    events: found.demands,
    whole: found.outcome.search.complete,
  });
  expect(outlook.on).toBe(on);
  expect(outlook.parts.map(({ part }) => part)).toContain("main");
  expect(outlook.date === undefined || outlook.date >= on).toBe(true);

  // The verdict of the day rests on the log: without it, it is another one.
  const { key } = sandbox.store.getState().assessment;
  sandbox.actions.undo();
  expect(sandbox.store.getState().assessment.key).not.toBe(key);
  expect(foundOf(sandbox.store.getState())).toBeUndefined();
  sandbox.actions.redo();
  expect(foundOf(sandbox.store.getState())).toBe(found);
  expect(inputHash(wear.store.getState().work.log.tests)).toBe(inputHash(log.tests));
  sandbox.actions.stop();
});
