// Puts the house's faces beside the bundled command line, for the pages that it writes.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { basename } from "node:path";

const FACES = [
  "@fontsource/ibm-plex-sans/files/ibm-plex-sans-latin-400-normal.woff2",
  "@fontsource/ibm-plex-sans/files/ibm-plex-sans-latin-600-normal.woff2",
  "@fontsource-variable/source-serif-4/files/source-serif-4-latin-wght-normal.woff2",
];

export function facesPlugin() {
  const { resolve } = createRequire(import.meta.url);
  return {
    name: "house-faces",
    generateBundle() {
      for (const face of FACES) {
        this.emitFile({ type: "asset", fileName: `faces/${basename(face)}`, source: readFileSync(resolve(face)) });
      }
    },
  };
}
