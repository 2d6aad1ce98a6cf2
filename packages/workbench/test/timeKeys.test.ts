import { describe, expect, it } from "vitest";
import { keyMove } from "../src/keys/keyMove.ts";
import { keyAction, TIME_KEYS } from "../src/playback/timeKeys.ts";

describe("keys", () => {
  const press = (key: string, held: Partial<Record<"shiftKey" | "ctrlKey" | "altKey" | "metaKey", boolean>> = {}) =>
    keyAction({ key, shiftKey: false, ctrlKey: false, altKey: false, metaKey: false, ...held });

  it("move the cursor in three sizes", () => {
    expect(press("ArrowRight")).toEqual({ do: "seek", size: "medium", direction: 1 });
    expect(press("ArrowLeft", { shiftKey: true })).toEqual({ do: "seek", size: "coarse", direction: -1 });
    expect(press("ArrowLeft", { altKey: true })).toEqual({ do: "seek", size: "fine", direction: -1 });
  });

  it("leave to browser and system what is theirs", () => {
    expect(press("0", { ctrlKey: true })).toBeNull();
    expect(press("ArrowLeft", { metaKey: true })).toBeNull();
    expect(press("l", { altKey: true })).toBeNull();
    expect(press("x")).toBeNull();
    expect(press("toString")).toBeNull();
  });

  it("are all listed for the reader, and every listed one does something", () => {
    const named: Readonly<Record<string, string>> = { Space: " ", "←": "ArrowLeft", "→": "ArrowRight", "−": "-" };
    for (const { keys } of TIME_KEYS) {
      for (const key of keys.replace(/^(Shift|Alt) \+ /, "").split(" ")) {
        expect(press(named[key] ?? key), key).not.toBeNull();
      }
    }
  });

  it("reach brackets that are written with Alt held", () => {
    expect(press("[", { altKey: true, ctrlKey: true })).toEqual({ do: "mark", direction: -1 });
  });
});

describe("keys that move what a slider holds", () => {
  it("are the arrows, and the pages for large steps; every other key is left alone", () => {
    expect(keyMove({ key: "ArrowLeft", shiftKey: false })).toEqual({ across: -1, up: 0, isLarge: false });
    expect(keyMove({ key: "ArrowUp", shiftKey: true })).toEqual({ across: 0, up: 1, isLarge: true });
    expect(keyMove({ key: "PageDown", shiftKey: false })).toEqual({ across: 0, up: -1, isLarge: true });
    expect(keyMove({ key: "Home", shiftKey: false })).toBeUndefined();
  });
});
