/** The sentence on what the last change of the rig did. */
import { describe, expect, it } from "vitest";
import { type ChangeSeen, changeNow, lastChangeTold, openLayouts, seeChange, writtenLayout } from "../src/index.ts";
import { demoDocument } from "./demoDocument.ts";
import { fell, handSandbox } from "./handRunner.ts";

/** A sandbox whose first fall has been run, and somebody who looks at every state. */
async function looked() {
  const hand = handSandbox(demoDocument());
  let seen: ChangeSeen | undefined;
  const see = () => {
    seen = seeChange(seen, changeNow(hand.state()));
  };
  see();
  hand.sandbox.store.subscribe(see);
  async function fall(): Promise<void> {
    hand.settle();
    hand.runner.runs.at(-1)!.answer(fell("a run"));
    await hand.settled();
  }
  void hand.sandbox.actions.runNow();
  await fall();
  return { ...hand, fall, told: () => lastChangeTold(seen!, hand.state()), seen: () => seen! };
}

describe("the sentence on the last change", () => {
  it("names the change once its fall has been run, and is silent before any change", async () => {
    const { sandbox, fall, told } = await looked();
    expect(told()).toBeUndefined();
    sandbox.actions.edit("walker.mass", "95 kg", "Mass of the walker");
    sandbox.actions.finishEdit();
    expect(told()).toBeUndefined();
    await fall();
    expect(told()).toMatch(/Mass of the walker/);
  });

  it("goes when the change is taken back", async () => {
    const { sandbox, fall, told } = await looked();
    sandbox.actions.edit("walker.mass", "95 kg", "Mass of the walker");
    await fall();
    sandbox.actions.undo();
    await fall();
    expect(told()).toBeUndefined();
  });

  it("says nothing of a state that is another for a reason outside of the rig's file", async () => {
    const { sandbox, fall, told, seen } = await looked();
    sandbox.actions.edit("walker.mass", "95 kg", "Mass of the walker");
    await fall();
    const edited = seen();
    expect(seeChange(edited, { ...edited, key: "another state" }).ofEdit).toBe(false);
    expect(seeChange(edited, changeNow(sandbox.store.getState()))).toBe(edited);
    expect(told()).toBeDefined();
  });
});

it("layouts that cannot be read are told, and those that cannot be kept", () => {
  const { sandbox, services, state } = handSandbox(demoDocument());
  const texts = () => state().session.notices.map(({ text }) => text);
  const waiting: (() => void)[] = [];
  const later = (_: number, action: () => void) => {
    waiting.push(action);
    return () => undefined;
  };
  const shelf = {
    getItem: (key: string) => (key === "secondline.layouts" ? "[7]" : null),
    setItem(key: string) {
      if (key === "secondline.layouts") throw new Error("no room");
    },
  };
  const { layouts } = openLayouts(sandbox, { ...services, later }, shelf);
  expect(texts()).toHaveLength(1);
  layouts.add(writtenLayout(sandbox));
  for (const action of waiting.splice(0)) action();
  expect(texts()).toEqual([expect.anything(), expect.stringContaining("no room")]);
});
