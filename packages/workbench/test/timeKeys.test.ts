import { describe, expect, it } from "vitest";
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
