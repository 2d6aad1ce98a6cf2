import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { filled } from "../src/language.ts";
import { NEW_RIG_ENGLISH } from "../src/newRigEnglish.ts";

const root = new URL("../../../", import.meta.url);
const sources = ["packages/words/src", "apps/cli/src", "apps/sandbox/src", "packages/workbench/src"].flatMap((folder) =>
  readdirSync(new URL(folder, root), { recursive: true, encoding: "utf8" })
    .filter((name) => /\.tsx?$/.test(name) && !name.endsWith("newRigEnglish.ts"))
    .map((name) => readFileSync(new URL(`${folder}/${name}`, root), "utf8")),
);

describe("what is said where a rig is begun", () => {
  const keys = Object.keys(NEW_RIG_ENGLISH) as (keyof typeof NEW_RIG_ENGLISH)[];

  it("has no sentence that nobody says", () => {
    const text = sources.join("\n");
    const patterns = [...text.matchAll(/`([\w.]+\.\$\{[^}]*\})`/g)].map(
      ([, one]) => new RegExp(`^${one!.replace(/\$\{[^}]*\}/g, "\\w+").replaceAll(".", "\\.")}$`),
    );
    const said = (key: string) => text.includes(`"${key}"`) || patterns.some((one) => one.test(key));
    expect(keys.filter((key) => !said(key))).toEqual([]);
  });

  it("has all braces closed", () => {
    for (const key of keys) {
      const names = [...NEW_RIG_ENGLISH[key].matchAll(/\{(\w+)/g)].map(([, name]) => name!);
      for (const value of [1, 2])
        expect(filled(NEW_RIG_ENGLISH[key], Object.fromEntries(names.map((name) => [name, value])))).not.toMatch(
          /[{}|]/,
        );
    }
  });
});
