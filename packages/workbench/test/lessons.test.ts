import { InProcessRunner } from "@secondline/runner";
import { isLessonsKey } from "@secondline/words/page/lessons";
import { describe, expect, it } from "vitest";
import type { Shelf } from "../src/keeping/shelf.ts";
import { alongLine, carriedAt } from "../src/lessons/along.ts";
import { aloud, halfWithin, triedIn } from "../src/lessons/aloud.ts";
import { computeLesson } from "../src/lessons/computeLesson.ts";
import {
  allFacts,
  crossingOf,
  givenFacts,
  type LessonRun,
  marginOf,
  partOutcomeOf,
  storyOf,
  wayOut,
} from "../src/lessons/facts.ts";
import { judgement } from "../src/lessons/judge.ts";
import { keep, readKept } from "../src/lessons/kept.ts";
import { LESSONS, type Lesson, type LessonId } from "../src/lessons/lessons.ts";
import { isSameFall, picturesOf } from "../src/lessons/pictures.ts";
import { lessonResultWords, onScale, saidWords } from "../src/lessons/quantity.ts";
import { prose, say, type WordKey } from "../src/lessons/words.ts";
import { read } from "./demoDocument.ts";

const services = { runner: new InProcessRunner(), read };
const runs = new Map<LessonId, Promise<{ before: LessonRun; after: LessonRun }>>();

async function done(lesson: Lesson, which: "before" | "after"): Promise<LessonRun> {
  const { whatIf, times, sweep } = lesson;
  const asked = { ...(times ? { times } : {}), ...(sweep ? { sweep } : {}) };
  const question = { document: lesson[which], whatIf, ...(which === "after" ? asked : {}) };
  const answer = await computeLesson(`${lesson.id}.${which}`, question, services);
  if (!answer.ok) throw new Error(`${lesson.id}, ${which}: ${answer.message}`);
  return answer.value;
}

/** Both runs of a lesson, made by the simulation once. */
function runsOf(id: LessonId) {
  const lesson = LESSONS.find((one) => one.id === id)!;
  const known =
    runs.get(id) ?? (async () => ({ before: await done(lesson, "before"), after: await done(lesson, "after") }))();
  runs.set(id, known);
  return known;
}

describe("what the lessons say is what the simulation does", () => {
  it("without a backup the walker reaches the ground nearly as fast as in a free fall", async () => {
    const { before, after } = await runsOf("noBackup");
    expect(before.outcome.caughtBy).toBe("backup");
    expect(after.outcome).toMatchObject({ caughtBy: "nothing", lostBecause: "ground" });
    const free = Math.sqrt(2 * 9.80665 * after.outcome.drop!);
    expect(after.outcome.groundSpeed! / free).toBeGreaterThan(0.85);
    expect(after.outcome.groundSpeed! / free).toBeLessThanOrEqual(1.001);
    // The ring runs from the middle towards the loose end at A, or off it.
    const { frames } = after.recording;
    expect(frames.ringAt[2 * (frames.count - 1)]).toBeLessThan(0.25);
  });

  it("three times the slack costs more height and force, but not three times the drop", async () => {
    const { before, after } = await runsOf("looseBackup");
    const ratio = after.outcome.drop! / before.outcome.drop!;
    expect(ratio).toBeGreaterThan(1.3);
    expect(ratio).toBeLessThan(2.5);
    expect(after.outcome.drop! - before.outcome.drop!).toBeGreaterThan(4.8);
    expect(after.outcome.peaks!.leash).toBeGreaterThan(before.outcome.peaks!.leash);
  });

  it("a connection about halves the drop and softens the catch", async () => {
    const { before, after } = await runsOf("connection");
    const ratio = after.outcome.drop! / before.outcome.drop!;
    expect(ratio).toBeGreaterThan(0.4);
    expect(ratio).toBeLessThan(0.6);
    expect(after.outcome.peaks!.leash).toBeLessThan(before.outcome.peaks!.leash);
  });

  it("the knot can be counted on for less than half of the loop, and fails in the fall that the loop bears", async () => {
    const { before, after } = await runsOf("knot");
    const [loop, knot] = [marginOf(before, "backup.endA")!, marginOf(after, "backup.endA")!];
    expect(loop.margin).toBeGreaterThan(1);
    expect(knot.strength5 / loop.strength5).toBeLessThan(0.5);
    expect(knot.margin).toBeLessThan(1);
    // The load is that of a fall in which the knot does not part: the same as the loop's.
    expect(Math.abs(knot.load / loop.load - 1)).toBeLessThan(0.02);
    expect(after.outcome.gaveWay.map(({ part }) => part)).toContain("backup.endA");
    // A middling knot holds more than can be counted on, and the text says at which load the one in the picture went.
    const { breakLoad = "" } = allFacts(before, after);
    expect(Number.parseFloat(breakLoad) * 1000).toBeGreaterThan(knot.strength5);
    expect(Number.parseFloat(breakLoad) * 1000).toBeLessThan(knot.load);
    expect(after.outcome.caughtBy).toBe("nothing");
  });

  it("the clamp mark inside the span takes much strength at a place that pulls as hard as the middle", async () => {
    const { before, after } = await runsOf("clampMark");
    const [clean, marked] = [marginOf(before, "main")!, marginOf(after, "main")!];
    expect(clean.margin).toBeGreaterThan(2);
    expect(marked.strength5 / clean.strength5).toBeLessThan(0.6);
    expect(marked.reason).toBe("clamp mark");
    expect(marked.at).toBeCloseTo(5, 0);
    expect(marked.load / clean.load).toBeGreaterThan(0.95);
    expect(marked.margin).toBeLessThan(marked.required);
  });

  it("a short stiff line pulls harder on the walker, and harder still on its anchors", async () => {
    const { before, after } = await runsOf("shortStiff");
    const harness = after.outcome.peaks!.leash / before.outcome.peaks!.leash;
    const anchors = after.outcome.peaks!.mainA / before.outcome.peaks!.mainA;
    expect(harness).toBeGreaterThan(1.5);
    expect(anchors).toBeGreaterThan(harness);
  });

  it("thirty times the same fall are thirty pulls, all within a rig's numbers, and the hardest is asked for", async () => {
    const { after } = await runsOf("chance");
    const many = after.many!;
    expect(many).toHaveLength(30);
    expect(new Set(many).size).toBe(30);
    const lesson = LESSONS.find(({ id }) => id === "chance")!;
    expect(lesson.read(after)).toBe(Math.max(...many));
    expect(lesson.went(after, { ...after, many: many.slice(0, 20) })).toBe(false);
    expect(allFacts(after, after).manyMost).toBe(
      lessonResultWords(onScale(Math.max(...many), lesson.scale), lesson.scale),
    );
  });

  it("the picture beside the one run is the hardest of the thirty, with the pull that its dot has", async () => {
    const { before, after } = await runsOf("chance");
    const [one, hardest, ...others] = picturesOf("chance", before, after);
    expect(others).toEqual([]);
    expect([one!.label, hardest!.label]).toEqual(["The one run", "The hardest of thirty"]);
    expect(hardest!.fall.outcome.peaks!.leash).toBeCloseTo(Math.max(...after.many!), 6);
    expect(hardest!.fall.recording).not.toBe(one!.fall.recording);
    expect(one!.fall.outcome.peaks!.leash).not.toBe(hardest!.fall.outcome.peaks!.leash);
  });

  it("the picture beside 4 % of slack is the fall at the slack where the curve meets the limit", async () => {
    const { before, after } = await runsOf("howFar");
    const [given, there] = picturesOf("howFar", before, after);
    const { crossAt } = allFacts(before, after);
    expect([given!.label, there!.label]).toEqual(["At 4 % of slack", `At ${crossAt} of slack`]);
    expect(before.assessed.rig.backup!.slack).toBeCloseTo(0.04, 9);
    expect(there!.fall.assessed.rig.backup!.slack * 100).toBeCloseTo(Number.parseFloat(crossAt!), 6);
    expect(there!.fall.outcome.drop!).toBeGreaterThan(given!.fall.outcome.drop!);
  });

  it.each(LESSONS.map(({ id }) => id))(
    "%s offers two pictures that differ, each by a name that says how",
    async (id) => {
      const { before, after } = await runsOf(id);
      expect(picturesOf(id, before, undefined)).toHaveLength(1);
      const pictures = picturesOf(id, before, after);
      expect(pictures).toHaveLength(2);
      expect(new Set(pictures.map(({ label }) => label)).size).toBe(2);
      const [was, is] = pictures.map(({ fall }) => fall);
      // Where two lines fall alike, what stands under the picture tells them apart.
      const isAlike = LESSONS.find((one) => one.id === id)!.along === true;
      expect(isSameFall(was!, is!)).toBe(isAlike);
      if (isAlike) expect(alongLine(after)).not.toEqual(alongLine(before));
      // A second run without a picture of its own is none to choose.
      const { shown: _, ...bare } = after;
      expect(picturesOf(id, before, bare)).toHaveLength(after.shown ? 1 : 2);
    },
  );

  it("a range of slack meets its limit at one place, with an interval about it, and is kept below", async () => {
    const { after } = await runsOf("howFar");
    const crossing = crossingOf(after.swept)!;
    expect(crossing).toMatchObject({ kept: "below", limit: { kind: "own", value: 15 } });
    expect(crossing.low!).toBeLessThan(crossing.at);
    expect(crossing.high!).toBeGreaterThan(crossing.at);
    expect(crossingOf(undefined)).toBeUndefined();
  });

  it.each(LESSONS.map(({ id }) => id))(
    "%s fills every blank of its texts, and its number fits on its slider",
    async (id) => {
      const lesson = LESSONS.find((one) => one.id === id)!;
      const { before, after } = await runsOf(id);
      const facts = allFacts(before, after);
      const why = lesson.why?.(after) ?? (`${id}.why` as WordKey);
      expect(lesson.went(before, after)).toBe(true);
      const told = [
        say(`${id}.given`, givenFacts(before)),
        say(why, facts),
        say(`${id}.summary`, facts),
        say(`${id}.notTold`, facts),
        ...([1, 2, 3] as const).map((reason) => say(`${id}.reply${reason}`, facts)),
      ].join(" ");
      expect(told).not.toMatch(/[{}]|–|NaN|undefined/);
      const number = onScale(lesson.read(after)!, lesson.scale);
      expect(number).toBeGreaterThan(lesson.scale.from);
      expect(number).toBeLessThan(lesson.scale.to);
    },
  );
});

it("a lesson whose runs go another way explains nothing", async () => {
  const { before, after } = await runsOf("noBackup");
  const lesson = LESSONS.find(({ id }) => id === "noBackup")!;
  expect(lesson.went(before, before)).toBe(false);
  expect([wayOut(before), wayOut(after)]).toEqual(["caught", "lost"]);
  expect(storyOf(after)).toMatch(/^You reached the ground at [\d.]+ m\/s\./);
  expect(partOutcomeOf(after, "backup")).toBeUndefined();
});

it("the rigs of the lessons say that they are invented", () => {
  for (const { before, after } of LESSONS) {
    for (const document of [before, after]) expect(read(document)).toMatchObject({ ok: true, rig: { invented: true } });
  }
});

it("lets a placeholder that nobody fills be seen, and takes values literally", () => {
  expect(say("list.kept", { predicted: "3 m" })).toBe("You said 3 m; the run gave {result}.");
  expect(say("slider.given", { value: "{value} $& $1" })).toBe("Given: {value} $& $1");
});

it("keeps a number and its unit on one line of a paragraph", () => {
  expect(prose("connection.ask")).toContain("24\u00a0m from anchor A: that is 6\u00a0m from you");
  expect(prose("looseBackup.given")).toContain("4\u00a0% longer");
  expect(prose("shortStiff.ask").replaceAll("\u00a0", " ")).toBe(say("shortStiff.ask"));
});

it("has every text that a lesson needs", () => {
  for (const { id } of LESSONS) {
    for (const part of [
      "title",
      "line",
      "given",
      "ask",
      "slider",
      "reason1",
      "reason2",
      "reason3",
      "reply1",
      "reply2",
      "reply3",
      "summary",
      "notTold",
    ])
      expect(isLessonsKey(`${id}.${part}`), `${id}.${part}`).toBe(true);
  }
});

describe("a prediction beside the result", () => {
  it.each([
    [10, 10, "That is the run’s number."],
    [10, 11, "Close: the run came within 10 % of your number."],
    [10, 16, "The run came to 1.6 times what you said."],
    [10, 4.4, "The run came to 44 % of what you said."],
    [0, 4, "You said none at all; the run gave 4 m."],
  ])("said %s, got %s", (said, got, words) => expect(judgement(said, got, `${got} m`)).toBe(words));

  it("writes results as the sentences beside them do, to the safe side, and what was said as it was said", () => {
    const [speed, drop, , strength, , pull] = LESSONS.map(({ scale }) => scale);
    expect([lessonResultWords(96.1, speed!), lessonResultWords(15.31, drop!), lessonResultWords(22.4, drop!)]).toEqual([
      "97 km/h",
      "15.4 m",
      "22.4 m",
    ]);
    expect([lessonResultWords(21.89, strength!), lessonResultWords(4.321, pull!)]).toEqual(["21.8 kN", "4.33 kN"]);
    expect([saidWords(20, speed!), saidWords(4.3, pull!)]).toEqual(["20 km/h", "4.3 kN"]);
  });
});

describe("predictions kept on the device", () => {
  const memory = (first?: string): Shelf & { readonly items: Map<string, string> } => {
    const items = new Map(first === undefined ? [] : [["secondline.lessons", first]]);
    return { items, getItem: (key) => items.get(key) ?? null, setItem: (key, value) => void items.set(key, value) };
  };
  const one = { predicted: 12, reason: 2, ownReason: "slack", result: 15.4, when: 1 } as const;

  it("come back as they were, the last one last", () => {
    const shelf = memory();
    keep(shelf, keep(shelf, {}, "knot", one), "knot", { ...one, predicted: 5 });
    expect(readKept(shelf)).toEqual({ knot: [one, { ...one, predicted: 5 }] });
  });

  it("are set aside, not lost, when they cannot be read", () => {
    const shelf = memory("{not json");
    expect(readKept(shelf)).toEqual({});
    expect(shelf.items.get("secondline.lessons.unreadable")).toBe("{not json");
    const twice = '{"knot":[],"knot":[]}';
    const second = memory(twice);
    expect(readKept(second)).toEqual({});
    expect(second.items.get("secondline.lessons.unreadable")).toBe(twice);
  });

  it("leave out what is no prediction", () => {
    const shelf = memory(
      JSON.stringify({ knot: [one, { predicted: "12" }, null, { ...one, reason: 7 }], other: [one] }),
    );
    expect(readKept(shelf)).toEqual({ knot: [one] });
  });

  it("made under a lesson's earlier name are still there", () => {
    expect(readKept(memory(JSON.stringify({ trace: [one] })))).toEqual({ clampMark: [one] });
  });

  it("a full storage is an error for the caller to tell", () => {
    const full = {
      getItem: () => null,
      setItem: () => {
        throw new Error("the storage is full");
      },
    };
    expect(() => keep(full, {}, "knot", one)).toThrow("the storage is full");
  });
});

describe("strength and load along the line", () => {
  it("has the clamp mark where it lies, and carries at it in every moment what the frame says", async () => {
    const { before, after } = await runsOf("clampMark");
    expect(alongLine(before).mark).toBeUndefined();
    const { mark, length } = alongLine(after);
    expect(mark!.middle).toBeCloseTo(5, 1);
    expect(mark!.strength5).toBeCloseTo(marginOf(after, "main")!.strength5, 6);
    const { lowestTime } = after.recording.walker;
    const [rest, lowest] = [0, lowestTime].map((time) => {
      const loads = carriedAt(after.recording, time, length);
      expect(loads[0]!.from).toBe(0);
      expect(loads.at(-1)!.to).toBeCloseTo(length, 3);
      return loads.find(({ to }) => to >= mark!.middle)!.force;
    });
    expect(lowest!).toBeGreaterThan(rest!);
  });
});

describe("answers to read aloud", () => {
  const when = 1;
  const kept = {
    knot: [{ predicted: 20, reason: 1, result: 6.2, when }],
    looseBackup: [
      { predicted: 10, reason: 1, result: 15.4, when },
      { predicted: 15, reason: 3, result: 15.4, when },
    ],
    connection: [{ predicted: 4, reason: 2, when }],
  } as const;

  it("are the learner's own last numbers beside those of the runs, and what is not tried gives nothing away", () => {
    const text = aloud(kept);
    expect(text).toContain("Lesson 2: Slack in the backup\nAsked: Give the backup 12 % instead");
    expect(text).toContain("You said 15 m. The run gave 15.4 m. Close: the run came within 3 % of your number.");
    expect(text).toContain("You said 20 kN. The run gave 6.20 kN. The run came to 31 % of what you said.");
    expect(text).toContain("of your number.\nBecause: More than before, but less than in proportion");
    expect(text.match(/Because:/g)).toHaveLength(2);
    expect(text.match(/Not tried\./g)).toHaveLength(LESSONS.length - 2);
    expect(text.match(/In short:/g)).toHaveLength(1);
    expect(text).not.toMatch(/[{}]|undefined|NaN/);
    expect(text).toContain("They describe no real line.");
  });

  it("say how near half of the numbers came, of those that have a result", () => {
    expect(halfWithin(triedIn(kept))).toBeCloseTo(0.026, 3);
    expect(halfWithin(triedIn({}))).toBeUndefined();
  });
});
