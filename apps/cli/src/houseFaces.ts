/** The house's faces for a page that is written, from beside the bundled command line. */
import { readFileSync } from "node:fs";
import { faceRule, HOUSE_FACES } from "@secondline/report";

/** Empty if a file is missing: the page then takes installed typefaces. */
export function houseFaces(): string {
  try {
    return HOUSE_FACES.map((face) => {
      const name = face.file.slice(face.file.lastIndexOf("/") + 1);
      return faceRule(face, readFileSync(new URL(`./faces/${name}`, import.meta.url)).toString("base64"));
    }).join("\n");
  } catch {
    return "";
  }
}
