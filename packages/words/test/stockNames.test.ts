/** Names of webbings and ropes, and what weakens a place. */
import { GENERIC_STOCKS } from "@secondline/rig";
import { noteFact } from "@secondline/strength";
import { afterEach, describe, expect, it, vi } from "vitest";

/** The words in a language that marks what it says. */
async function inPseudo() {
  vi.resetModules();
  vi.doMock("../src/broughtEnglish.ts", () => import("../src/broughtPseudo.ts"));
  const [{ stockName, materialName }, { tellNote }, { weakness }] = await Promise.all([
    import("../src/stockNames.ts"),
    import("../src/laterNoteWords.ts"),
    import("../src/partNames.ts"),
  ]);
  return { stockName, materialName, tellNote, weakness };
}
afterEach(() => {
  vi.doUnmock("../src/broughtEnglish.ts");
  vi.resetModules();
});

describe("in another language", () => {
  it("a webbing of the library has its name there, and one of somebody's own keeps the name that they gave it", async () => {
    const { stockName, materialName, tellNote } = await inPseudo();
    for (const { id, name } of GENERIC_STOCKS.values()) {
      expect(stockName(name)).toMatch(/^⟦.*⟧$/);
      expect(materialName(id)).toBe(stockName(name));
    }
    const own = [{ ...GENERIC_STOCKS.get("polyester-webbing-25")!, id: "own-red", name: "Red tape" }];
    expect(stockName("Red tape")).toBe("Red tape");
    expect([materialName("own-red", own), materialName("own-red")]).toEqual(["Red tape", "own-red"]);
    expect(tellNote(noteFact("basis.newTests", { tests: "three", stock: { stock: "Red tape" } }))).toContain(
      "Red tape",
    );
    const library = noteFact("basis.newTests", { tests: "three", stock: { stock: "Polyester webbing 25 mm" } });
    expect(tellNote(library)).toContain("⟦Póóĺĺýýéé");
  });

  it("several things that weaken a place are told one by one", async () => {
    const { weakness } = await inPseudo();
    expect(weakness("clamp mark and fall zone").match(/⟦/g)).toHaveLength(2);
  });
});

it("in English a place is weak by what weakens it", async () => {
  const { weakness } = await import("../src/partNames.ts");
  expect(["webbing", "clamp mark", "clamp mark and fall zone"].map(weakness)).toEqual([
    "webbing",
    "clamp mark",
    "clamp mark and fall zone",
  ]);
});
