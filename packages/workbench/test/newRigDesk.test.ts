/** The questions about a new rig, without a page: what is kept, and what can be taken back. */
import { expect, it } from "vitest";
import {
  answersText,
  createNewRigDesk,
  keptAnswers,
  type Point,
  readAnswers,
  rememberingShelf,
  rigFrom,
  sideOf,
  wasReplaced,
} from "../src/index.ts";

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
  const device = { full: false };
  const remembering = rememberingShelf(() => ({
    ...shelf,
    setItem(key, text) {
      if (device.full) throw new DOMException("exceeded", "QuotaExceededError");
      shelf.setItem(key, text);
    },
  }));
  const again = () => createNewRigDesk({ shelf: () => remembering });
  const desk = again();
  const answers = () => desk.store.getState().moves.present.answers;
  const unkept = () => desk.store.getState().unkept;
  return { desk, again, device, texts, answers, unkept, kept: () => keptAnswers(shelf) };
}

it("every answer is kept, and there again for whoever comes back", () => {
  const { desk, texts, kept } = deskOn();
  desk.answer("span", "70 m");
  desk.confirm("leash", true);
  expect(kept()).toEqual({ span: "70 m", confirmed: ["leash"] });
  const { desk: later, answers } = deskOn(texts);
  expect(answers()).toEqual({ span: "70 m", confirmed: ["leash"] });
  later.confirm("leash", false);
  later.answer("span", "");
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

it("a storage that fills up while questions are answered is told beside the question, loses no answer, and is told until it keeps again", () => {
  const { desk, device, answers, kept, unkept } = deskOn();
  desk.answer("span", "60 m");
  expect(unkept()).toBeUndefined();
  device.full = true;
  desk.answer("mass", "85 kg");
  expect(unkept()).toEqual({ reason: "its storage is full", at: "walker" });
  expect(answers()).toEqual({ span: "60 m", mass: "85 kg" });
  // What the device has is the last state that it could keep, whole.
  expect(kept()).toEqual({ span: "60 m" });
  desk.confirm("leash", true);
  expect(unkept()?.at).toBe("leash");
  // Everything goes on in memory: there is a rig of these answers, a step back, and a file of them.
  expect(rigFrom(answers()).rig?.walker.mass).toBe(85);
  desk.host.ground(VALLEY, 1, "drag ground 1");
  expect(unkept()?.at).toBe("ground");
  desk.takeBack();
  expect(answers()).toEqual({ span: "60 m", mass: "85 kg", confirmed: ["leash"] });
  expect(readAnswers(answersText(answers()))).toEqual({ ok: true, answers: answers() });
  device.full = false;
  desk.answer("rise", "2 m");
  expect(unkept()).toBeUndefined();
  expect(kept()).toEqual(answers());
});

it("answers that a full storage did not keep are there again for whoever comes back to the questions, and are told at once", () => {
  const { desk, device, again } = deskOn();
  device.full = true;
  desk.answer("span", "60 m");
  const back = again();
  expect(back.store.getState().moves.present.answers).toEqual({ span: "60 m" });
  expect(back.store.getState().unkept?.reason).toBe("its storage is full");
  device.full = false;
  back.answer("mass", "85 kg");
  expect(again().store.getState()).toEqual({
    moves: expect.objectContaining({ present: { answers: { span: "60 m", mass: "85 kg" } } }),
  });
});

it("saved answers that are opened, and a new beginning, can be taken back until something else is answered", () => {
  const { desk, answers } = deskOn();
  desk.answer("span", "60 m");
  desk.reset();
  expect(answers()).toEqual({});
  expect(wasReplaced(desk.store.getState().moves)).toBe(true);
  desk.replace({ span: "70 m" });
  desk.takeBack();
  desk.takeBack();
  expect(answers()).toEqual({ span: "60 m" });
  expect(wasReplaced(desk.store.getState().moves)).toBe(false);
});
