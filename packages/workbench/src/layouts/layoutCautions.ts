import { listed } from "@secondline/words";

/** The cautions of several layouts: those of everyone once, the others with the letters of the layouts that they belong to. */
export function layoutCautions(
  general: readonly string[],
  own: readonly { readonly letter: string; readonly cautions: readonly string[] }[],
): readonly string[] {
  const letters = new Map<string, string[]>();
  for (const { letter, cautions } of own) {
    for (const caution of cautions) {
      if (general.includes(caution)) continue;
      letters.set(caution, [...(letters.get(caution) ?? []), letter]);
    }
  }
  return [...general, ...[...letters].map(([caution, whose]) => `${listed(whose)}: ${caution}`)];
}
