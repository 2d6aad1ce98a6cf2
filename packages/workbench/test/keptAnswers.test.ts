import { describe, expect, it } from "vitest";
import { keepAnswers, keptAnswers } from "../src/newRig/keptAnswers.ts";

function shelf() {
  const kept = new Map<string, string>();
  return {
    kept,
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
  };
}

describe("answers that are not finished", () => {
  it("come back as they were", () => {
    const device = shelf();
    expect(keptAnswers(device)).toEqual({});
    keepAnswers(device, { span: "70", confirmed: ["leash"] });
    expect(keptAnswers(device)).toEqual({ span: "70", confirmed: ["leash"] });
    keepAnswers(device, {});
    expect(keptAnswers(device)).toEqual({});
  });

  it("that cannot be read are set aside, and nothing is taken for an answer", () => {
    const device = shelf();
    for (const text of ["{", '{"span": 60}', '{"span": "60 m", "speed": "1"}']) {
      device.kept.set("secondline.newRig", text);
      expect(keptAnswers(device)).toEqual({});
      expect(device.kept.get("secondline.newRig.unreadable")).toBe(text);
    }
  });

  it("say so when the storage is full", () => {
    const full = {
      ...shelf(),
      setItem: () => {
        throw new Error("full");
      },
    };
    expect(() => keepAnswers(full, { span: "60 m" })).toThrow("full");
  });
});
