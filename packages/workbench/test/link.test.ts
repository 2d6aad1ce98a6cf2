import { deflateSync, strToU8 } from "fflate";
import { expect, it } from "vitest";
import { readRigFile } from "../src/files/readRigFile.ts";
import { linkHash, readLink } from "../src/link/link.ts";
import { demoDocument, read } from "./demoDocument.ts";

const base64 = (bytes: Uint8Array) =>
  btoa(String.fromCharCode(...bytes))
    .replaceAll("+", "-")
    .replaceAll("/", "_")
    .replace(/=+$/, "");

it("brings rig, what-if, moment, part and view through a link unchanged", () => {
  const document = demoDocument();
  const whatIf = { kind: "mainFails", at: 0.25, cutAt: 0, walker: "caught" } as const;
  const shared = { document, whatIf, time: 1.25, part: "connection.0", camera: "anchor" } as const;
  expect(readLink(linkHash(shared), read)).toEqual({ kind: "rig", ...shared });
});

it("keeps names in other scripts through a link", () => {
  const document = { ...demoDocument(), name: "Überhang – 高空 🪢" };
  const back = readLink(linkHash({ document, whatIf: { kind: "leashFall", at: 0.5 } }), read);
  expect(back.kind === "rig" && back.document.name).toBe("Überhang – 高空 🪢");
});

it("sees no rig in a page opened without a link", () => {
  expect(readLink("", read)).toEqual({ kind: "none" });
  expect(readLink("#somewhere", read)).toEqual({ kind: "none" });
});

it.each([
  ["cut short", (hash: string) => hash.slice(0, 200)],
  ["with letters changed", (hash: string) => hash.replace("rig=", "rig=%%%")],
  ["of nothing", () => "#rig="],
])("calls a link %s broken", (_case, spoil) => {
  const hash = linkHash({ document: demoDocument(), whatIf: { kind: "leashFall", at: 0.5 } });
  const back = readLink(spoil(hash), read);
  expect(back.kind === "broken" && back.opened.text).toContain("link is incomplete or was changed");
});

it("does not unpack a link that would fill the memory", () => {
  const bomb = base64(deflateSync(strToU8(" ".repeat(20_000_000)), { level: 9 }));
  expect(bomb.length).toBeLessThan(40_000);
  expect(readLink(`#rig=${bomb}`, read).kind).toBe("broken");
});

it("a link or file with a name given twice, or with what is not seen, is refused and says where", async () => {
  const pack = (text: string) => `#rig=${base64(deflateSync(strToU8(text), { level: 9 }))}`;
  const text = JSON.stringify(demoDocument());
  for (const spoilt of [text.replace("{", '{"span":"50 m",'), text.replace('"span":"', '"span":"\\u202e')]) {
    const back = readLink(pack(spoilt), read);
    expect(back.kind === "broken" && back.opened.issues.map(({ path }) => path)).toEqual(["span"]);
    const file = { name: "rig.json", size: spoilt.length, text: async () => spoilt };
    const opened = await readRigFile(file, read);
    expect(!opened.ok && opened.text).toBe("rig.json was not opened: one thing is wrong in it.");
  }
});
