/** The house's faces as style rules with their data in them, for a page that is saved and must need nothing from anywhere. */
import sans from "@fontsource/ibm-plex-sans/files/ibm-plex-sans-latin-400-normal.woff2?url";
import sansStrong from "@fontsource/ibm-plex-sans/files/ibm-plex-sans-latin-600-normal.woff2?url";
import serif from "@fontsource-variable/source-serif-4/files/source-serif-4-latin-wght-normal.woff2?url";
import { faceRule, HOUSE_FACES } from "@secondline/report";

const FILES: Readonly<Record<(typeof HOUSE_FACES)[number]["file"], string>> = {
  "@fontsource/ibm-plex-sans/files/ibm-plex-sans-latin-400-normal.woff2": sans,
  "@fontsource/ibm-plex-sans/files/ibm-plex-sans-latin-600-normal.woff2": sansStrong,
  "@fontsource-variable/source-serif-4/files/source-serif-4-latin-wght-normal.woff2": serif,
};

/** Empty where a face cannot be fetched: the page then takes what is installed. */
export async function houseFaces(): Promise<string> {
  try {
    const rules = await Promise.all(
      HOUSE_FACES.map(async (face) => {
        const answer = await fetch(FILES[face.file]);
        if (!answer.ok) throw new Error(`${answer.status}`);
        return faceRule(face, base64(new Uint8Array(await answer.arrayBuffer())));
      }),
    );
    return rules.join("\n");
  } catch {
    return "";
  }
}

/** A call takes only so many arguments. */
const CHUNK_BYTES = 8192;

function base64(bytes: Uint8Array): string {
  let text = "";
  for (let at = 0; at < bytes.length; at += CHUNK_BYTES)
    text += String.fromCharCode(...bytes.subarray(at, at + CHUNK_BYTES));
  return btoa(text);
}
