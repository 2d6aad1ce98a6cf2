/** The questions about a new rig, without a page: what is kept, and what can be taken back. */
import { expect, it } from "vitest";
import { createNewRigDesk, keptAnswers, type Point, rigFrom, sideOf } from "../src/index.ts";

const VALLEY: readonly Point[] = [
  [0, -1],
  [25, -20],
  [50, -1],
];

function deskOn(texts = new Map<string, string>()) {
  const shelf = {
    getItem: (key: string) => texts.get(key) ?? null,
    setItem: (key: string, text: string) => void texts.set(key, text),
  };
  const troubles: unknown[] = [];
  const device = { full: false };
  const desk = createNewRigDesk({
    shelf: () => ({
      ...shelf,
      setItem(key, text) {
        if (device.full) throw new Error("full");
        shelf.setItem(key, text);
      },
    }),
    onTrouble: (error) => troubles.push(error),
  });
  const answers = () => desk.store.getState().moves.present.answers;
  return { desk, device, troubles, texts, answers, kept: () => keptAnswers(shelf) };
}

it("every answer is kept, and there again for whoever comes back", () => {
  const { desk, texts, kept } = deskOn();
  desk.answer("span", "70 m");
  desk.confirm("leash", true);
  expect(kept()).toEqual({ span: "70 m", confirmed: ["leash"] });
  const { desk: again, answers } = deskOn(texts);
  expect(answers()).toEqual({ span: "70 m", confirmed: ["leash"] });
  again.confirm("leash", false);
  again.answer("span", "");
  expect(answers()).toEqual({ confirmed: [] });
});

it("moves of one drag are one step back, and what was answered before stays", () => {
  const { desk, answers } = deskOn();
  desk.answer("span", "50 m");
  const before = answers();
  desk.host.ground(VALLEY, 1, "drag ground 1");
  desk.host.ground(VALLEY.with(1, [25, -22]), 1, "drag ground 1");
  expect(sideOf(rigFrom(answers()).document)?.points[1]).toEqual([25, -22]);
  expect(desk.host.takeBack("drag ground 1")).toBe(true);
  expect(answers()).toEqual(before);
});

it("a drag that was let go is not taken back by its group, but by the way back", () => {
  const { desk, answers } = deskOn();
  desk.host.connection([10, 20], 0, "drag connection 0");
  desk.host.done();
  expect(desk.host.takeBack("drag connection 0")).toBe(false);
  expect(answers().connections).toBe("10 m, 20 m");
  desk.takeBack();
  expect(answers()).toEqual({});
});

it("another answer begins anew: there is no move to take back", () => {
  const { desk } = deskOn();
  desk.host.ground(VALLEY, 1, "drag ground 1");
  expect(desk.store.getState().moves.past).toHaveLength(1);
  desk.answer("span", "60 m");
  expect(desk.store.getState().moves.past).toHaveLength(0);
});

it("a storage that is full is told once, until it was not", () => {
  const { desk, device, troubles, answers } = deskOn();
  device.full = true;
  desk.answer("span", "6");
  desk.answer("span", "60");
  expect(troubles).toHaveLength(1);
  expect(answers()).toEqual({ span: "60" });
  device.full = false;
  desk.answer("span", "60 m");
  device.full = true;
  desk.answer("span", "61 m");
  expect(troubles).toHaveLength(2);
});
