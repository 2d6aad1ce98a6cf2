/**
 * A language made of the English one, for tests: letters with accents, many of them twice, so that it is about 40 % longer, and
 * brackets about every sentence. A text without brackets was made outside the words; one with only one of them is cut off.
 */
const ACCENTED: Readonly<Record<string, string>> = {
  ...{ a: "áá", e: "éé", i: "íí", o: "óó", u: "úú", y: "ýý", r: "ŕŕ", l: "ĺĺ", c: "ç", n: "ñ", s: "š", z: "ž" },
  ...{ A: "ÁÁ", E: "ÉÉ", I: "ÍÍ", O: "ÓÓ", U: "ÚÚ", Y: "ÝÝ", C: "Ç", N: "Ñ", S: "Š", Z: "Ž" },
};

/** Names of values, and the signs around the choices of a choice by number. */
const PLACEHOLDER = /(\{\w+\|?|[|}])/;

export function pseudo(sentence: string): string {
  const letters = (text: string) => [...text].map((letter) => ACCENTED[letter] ?? letter).join("");
  const said = sentence.split(PLACEHOLDER).map((piece) => (PLACEHOLDER.test(piece) ? piece : letters(piece)));
  return `⟦${said.join("")}⟧`;
}

/** A catalogue in the pseudo-language. */
export const pseudoCatalogue = <Key extends string>(sentences: Readonly<Record<Key, string>>): Record<Key, string> =>
  Object.fromEntries(Object.entries<string>(sentences).map(([key, text]) => [key, pseudo(text)])) as Record<
    Key,
    string
  >;
