/**
 * The language of a build, chosen here and nowhere else: SECONDLINE_LANGUAGE=German, English without it. A language is a set of files in
 * `packages/words/src`: for each `wearEnglish.ts` a `wearGerman.ts` (for `english.ts` a `german.ts`) with the same keys, and with the
 * same names of exports but for the language's own (`WEAR_GERMAN`). What has no such file is said in English. "Pseudo" is made of the
 * English sentences by `inPseudo.ts`, for tests. An English build has nothing of this in it.
 */
import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const WORDS = fileURLToPath(new URL("../packages/words/src/", import.meta.url));
const ENGLISH = /([^/\\]*?)(?:English|english)(Later)?\.ts$/;
const TAKEN = "?in-language";

/** A plugin of Vite and rolldown, for the page with its threads and for the terminal. `folder`: where the English files are. */
export function languagePlugin(language = process.env.SECONDLINE_LANGUAGE ?? "English", folder = WORDS) {
  if (language === "English") return [];
  return [
    {
      name: "language",
      enforce: "pre",
      resolveId(source, importer = "") {
        if (!ENGLISH.test(source) || importer.includes(TAKEN) || !join(importer).startsWith(join(folder))) return null;
        const english = join(dirname(importer), source);
        return language === "Pseudo" || existsSync(ownOf(english, language)) ? english + TAKEN : null;
      },
      load: (id) => (id.endsWith(TAKEN) ? moduleOf(id.slice(0, -TAKEN.length), language, folder) : null),
      transformIndexHtml: (html) => html.replace('lang="en"', `lang="${codeOf(language, folder)}"`),
    },
  ];
}

/** The file of a language beside an English one. */
function ownOf(english, language) {
  const [file, name, later = ""] = ENGLISH.exec(english);
  const own = name === "" ? language[0].toLowerCase() + language.slice(1) : name + language;
  return english.slice(0, -file.length) + own + later + ".ts";
}

/** What stands in the place of an English file: its exports, of another. */
function moduleOf(english, language, folder) {
  const names = [...readFileSync(english, "utf8").matchAll(/^export const (\w+)/gm)].map(([, name]) => name);
  const own = ownOf(english, language);
  const from = (file) => JSON.stringify(file.replaceAll("\\", "/"));
  if (existsSync(own))
    return names
      .map((name) => `export { ${name.replace("ENGLISH", language.toUpperCase())} as ${name} } from ${from(own)};`)
      .join("\n");
  return [
    `import * as english from ${from(english)};`,
    `import { pseudoCatalogue } from ${from(join(folder, "inPseudo.ts"))};`,
    ...names.map((name) => `export const ${name} = pseudoCatalogue(english.${name});`),
  ].join("\n");
}

const codeOf = (language, folder) =>
  /LANGUAGE_CODE = "([\w-]+)"/.exec(readFileSync(join(folder, `locale${language}.ts`), "utf8"))[1];
