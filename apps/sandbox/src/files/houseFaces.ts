/** The house's faces as style rules with their data in them, for a page that is saved and must need nothing from anywhere. */
import sans from "@fontsource/ibm-plex-sans/files/ibm-plex-sans-latin-400-normal.woff2?url";
import sansStrong from "@fontsource/ibm-plex-sans/files/ibm-plex-sans-latin-600-normal.woff2?url";
import serif from "@fontsource-variable/source-serif-4/files/source-serif-4-latin-wght-normal.woff2?url";

const FACES = [
  { family: "IBM Plex Sans", weight: "400", url: sans },
  { family: "IBM Plex Sans", weight: "600", url: sansStrong },
  { family: "Source Serif 4", weight: "200 900", url: serif },
] as const;

/** Empty where a face cannot be fetched: the page then takes what is installed. */
export async function houseFaces(): Promise<string> {
  try {
    const rules = await Promise.all(
      FACES.map(async ({ family, weight, url }) => {
        const answer = await fetch(url);
        if (!answer.ok) throw new Error(`${answer.status}`);
        const data = base64(new Uint8Array(await answer.arrayBuffer()));
        return `@font-face{font-family:"${family}";font-weight:${weight};src:url(data:font/woff2;base64,${data}) format("woff2")}`;
      }),
    );
    return rules.join("\n");
  } catch {
    return "";
  }
}

/** So many bytes at a time: a call takes only so many arguments. */
const CHUNK = 8192;

function base64(bytes: Uint8Array): string {
  let text = "";
  for (let at = 0; at < bytes.length; at += CHUNK) text += String.fromCharCode(...bytes.subarray(at, at + CHUNK));
  return btoa(text);
}
