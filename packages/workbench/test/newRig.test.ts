/** A new rig from answers: what is taken over is marked, what is wrong is told at its place. */

import { readRig, writeRig } from "@secondline/rig";
import { tellFault } from "@secondline/words/faults";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ANSWERS, type Answers, answerWay, QUESTIONS, readAnswers, rigFrom } from "../src/index.ts";

const ALL: Answers = {
  name: "Quarry",
  span: "62 m",
  rise: "1 m",
  profile: [
    ["0 m", "-1 m"],
    ["30 m", "-25 m"],
    ["62 m", "0 m"],
  ],
  webbing: "polyamide-webbing-25",
  tension: "2 kN",
  backup: "yes",
  backupWebbing: "hmpe-webbing-25",
  slack: "6 %",
  connections: "every 15 m",
  connectionStrength: "20 kN",
  pointsA: "2",
  kindA: "bolt",
  strengthA: "25 kN",
  legAngleA: "40 deg",
  pointsB: "1",
  kindB: "tree",
  strengthB: "30 kN",
  rope: "dynamic-rope-10",
  leashLength: "1.4 m",
  knot: "figureEight",
  mass: "85 kg",
  age: "new",
};

const placesOf = (answers: Answers) => rigFrom(answers).faults.map(({ place }) => place);

describe("a new rig", () => {
  it("without an answer is the template: a whole rig of which nobody has confirmed anything", () => {
    const { rig, document, unconfirmed, faults } = rigFrom({});
    expect(faults).toEqual([]);
    expect(rig?.unconfirmed).toEqual(unconfirmed);
    for (const path of ["span", "rise", "ground", "main.pretension", "main.sections[0].stock", "walker.mass"])
      expect(unconfirmed).toContain(path);
    expect(unconfirmed).toContain("anchorB.hardware[1].carries");
    expect(readRig(writeRig(document)).ok).toBe(true);
    // Nobody said how old it is: nothing of it counts as new.
    expect(rig?.leash.condition).toEqual({});
    expect(rig?.leash.falls).toBeUndefined();
  });

  it("with every answer is left with what no question asks", () => {
    const { rig, unconfirmed, faults, doubts } = rigFrom(ALL);
    expect(faults).toEqual([]);
    expect(doubts).toEqual([]);
    expect(rig).toMatchObject({ span: 62, rise: 1, walker: { mass: 85 }, main: { pretension: 2000 } });
    expect(rig?.backup?.connections.map(({ at }) => at)).toEqual([0.2419, 0.4839, 0.7258, 0.9677]);
    expect(rig?.leash).toMatchObject({ falls: 0, condition: { ageYears: 0, monthsOutside: 0 } });
    expect(unconfirmed.filter((path) => !/end[AB]\.|hardware|pullAngle|legLength|rings|harness/.test(path))).toEqual(
      [],
    );
    expect(unconfirmed.length).toBeGreaterThan(10);
  });

  it("takes a value as confirmed by its answer alone, though it is that of the template", () => {
    const { unconfirmed } = rigFrom({ tension: ANSWERS.tension.start });
    expect(unconfirmed).not.toContain("main.pretension");
    expect(unconfirmed).toContain("main.sections[0].stock");
  });

  it("confirms what a question shows when somebody says that it is right, and nothing else", () => {
    const { unconfirmed } = rigFrom({ confirmed: ["leash"] });
    expect(unconfirmed.filter((path) => path.startsWith("leash"))).toEqual([]);
    expect(unconfirmed.length).toBeGreaterThan(30);
  });

  it("hangs where somebody says, and says nothing of it otherwise: then its months count with the most sun", () => {
    const old = { age: "2 years", outside: "10 months", sun: "50 %" };
    const { rig, document, unconfirmed } = rigFrom({ ...old, latitude: "high" });
    expect(rig).toMatchObject({ latitude: "high", leash: { condition: { monthsOutside: 10, latitude: "high" } } });
    expect(unconfirmed).not.toContain("latitude");
    expect(document.latitude).toBe("high");
    const silent = rigFrom(old);
    expect("latitude" in silent.document).toBe(false);
    expect(silent.rig?.leash.condition.latitude).toBeUndefined();
    expect(placesOf({ ...old, latitude: "60" })).toEqual(["latitude"]);
    const options = answerWay("latitude");
    expect(options.kind === "chosen" && options.options.map(({ value }) => value)).toEqual([
      "",
      "low",
      "middle",
      "high",
    ]);
  });

  it("needs kind and number of the points to call an anchor's points confirmed", () => {
    expect(rigFrom({ kindA: "bolt" }).unconfirmed).toContain("anchorA.points[0].kind");
    expect(rigFrom({ kindA: "bolt", pointsA: "3" }).unconfirmed).not.toContain("anchorA.points[0].kind");
  });

  it("makes a profile of the lowest point, which stays to be confirmed", () => {
    const { rig, unconfirmed } = rigFrom({ span: "40 m", rise: "2 m", lowest: "25 m", lowestAt: "10 m" });
    expect(rig?.ground).toEqual([
      [0, -1],
      [10, -25],
      [40, 1],
    ]);
    expect(unconfirmed).toContain("ground");
    expect(rigFrom({ span: "40 m", lowest: "25 m", shape: "walls" }).rig?.ground).toEqual([
      [0, -1],
      [4.41, -25],
      [35.59, -25],
      [40, -1],
    ]);
    expect(placesOf({ shape: "round" })).toEqual(["shape"]);
    // 375 m is a metre from anchor B: too near to it for a connection.
    expect(rigFrom({ span: "376 m" }).rig?.backup?.connections.at(-1)?.at).toBeCloseTo(360 / 376, 4);
    // 97.8408 m: places of a profile are told to the centimetre.
    for (const span of ["321 ft", "97.844 m", "60.333 m"]) {
      expect(rigFrom({ span }).faults).toEqual([]);
      expect(rigFrom({ span, shape: "walls", rise: "2.347 m" }).faults).toEqual([]);
    }
    expect(rigFrom({ lowest: "25 m", confirmed: ["ground"] }).unconfirmed).not.toContain("ground");
  });

  it("may have no backup: then nothing hangs on it, and it is said", () => {
    const { rig, unconfirmed, doubts } = rigFrom({ backup: "no" });
    expect(rig?.backup).toBeUndefined();
    expect(unconfirmed.some((path) => path.startsWith("backup"))).toBe(false);
    expect(doubts).toEqual([{ kind: "noBackup", place: "backup", values: {} }]);
  });
});

describe("what is wrong", () => {
  it("is told at its answer, with a value that would do", () => {
    expect(rigFrom({ span: "60" }).faults).toMatchObject([{ kind: "issue", place: "span", remedy: "60 m" }]);
    expect(rigFrom({ lowest: "25" }).faults).toMatchObject([{ kind: "depth", place: "lowest", remedy: "25 m" }]);
    expect(rigFrom({ lowest: "-25 m" }).faults).toMatchObject([{ place: "lowest", remedy: "25 m" }]);
    // Of a span of a mile the spacing of the template makes too many: the one that is offered does.
    const [many] = rigFrom({ span: "1 mile" }).faults;
    expect(many).toMatchObject({ kind: "placesMany", place: "connections", remedy: "every 27 m" });
    expect(rigFrom({ span: "1 mile", connections: many!.remedy! }).faults).toEqual([]);
    expect(rigFrom({ connections: "every 15" }).faults).toMatchObject([{ remedy: "every 15 m" }]);
    expect(rigFrom({ slack: "6" }).faults).toMatchObject([{ place: "slack", remedy: "6 %" }]);
  });

  it("has no value offered where a number may mean two: half of the sun is not half a per cent of it", () => {
    const { faults } = rigFrom({ age: "2 years", outside: "1 year", sun: "0.5" });
    // Told once, though every part has it.
    expect(faults).toMatchObject([{ kind: "issue", place: "sun" }]);
    expect(JSON.stringify(faults)).toContain("quantity.noUnit");
    expect(faults[0]!.remedy).toBeUndefined();
  });

  it("is ground as high as the line, a connection outside the span, a place beyond the anchors", () => {
    expect(
      placesOf({
        profile: [
          ["0 m", "-1 m"],
          ["25 m", "3 m"],
          ["50 m", "-1 m"],
        ],
      }),
    ).toEqual(["profile"]);
    expect(placesOf({ connections: "10 m, 70 m" })).toEqual(["connections"]);
    expect(placesOf({ lowestAt: "50 m" })).toEqual(["lowestAt"]);
    expect(placesOf({ lowest: "0.5 m" })).toEqual(["lowest"]);
  });

  it("is every fault at once, and no rig is made", () => {
    const made = rigFrom({ span: "far", mass: "80 m", pointsA: "0", backup: "perhaps", age: "old", sun: "much" });
    expect(made.rig).toBeUndefined();
    expect(new Set(made.faults.map(({ place }) => place))).toEqual(
      new Set(["span", "mass", "pointsA", "backup", "age", "sun"]),
    );
  });

  it("is a tension that the webbing does not hold", () => {
    expect(placesOf({ tension: "90 kN" })).toContain("tension");
  });

  it("is only doubted where it can be", () => {
    const doubtsAt = (answers: Answers) => rigFrom(answers).doubts.map(({ kind, place }) => `${kind} ${place}`);
    expect(doubtsAt({ mass: "200 lb" })).toEqual([]);
    expect(doubtsAt({ mass: "200 kg" })).toEqual(["unusual mass"]);
    expect(doubtsAt({ tension: "7.8 kN" })).toEqual(["tensionHigh tension"]);
    expect(doubtsAt({ connections: "none" })).toEqual(["wideGap connections"]);
    expect(doubtsAt({ age: "1 year", outside: "2 years" })).toEqual(["olderOutside outside"]);
  });

  it("never makes it throw, whatever is typed", () => {
    const text = fc.oneof(fc.constantFrom("60 m", "every 3 m", "new", "no", "5 %", "2", "-1 m", "1e9 m"), fc.string());
    const ids = QUESTIONS.flatMap(({ answers }) => answers);
    fc.assert(
      fc.property(fc.dictionary(fc.constantFrom(...ids), text, { maxKeys: 6 }), (answers) => {
        const { rig, faults } = rigFrom(answers);
        expect(rig === undefined).toBe(faults.length > 0);
      }),
      { seed: 7, numRuns: 100 },
    );
  });
});

describe("an answers file", () => {
  it("is read as it was given", () => {
    expect(readAnswers(JSON.stringify(ALL))).toEqual({ ok: true, answers: ALL });
  });

  it("is refused with every fault: unknown names, values that are no text, text that is no JSON", () => {
    const read = readAnswers(JSON.stringify({ spam: "60 m", mass: 80, confirmed: ["all"] }));
    expect(read.ok).toBe(false);
    const paths = read.ok ? [] : read.issues.map(({ path }) => path);
    expect(paths.sort()).toEqual(["confirmed.0", "mass", "spam"]);
    const spam = read.ok ? undefined : read.issues.find(({ path }) => path === "spam");
    expect(tellFault(spam!.message)).toContain('Did you mean "span"?');
    expect(readAnswers("{").ok).toBe(false);
    expect(readAnswers("[]").ok).toBe(false);
  });
});
