/** Names of the files that are handed out. */

/** Letters of a file's name; a rig and its what-if together are long [-]. */
const LONGEST_NAME = 120;

/** A name for a file: letters and digits of `name`, joined by dashes. */
export function fileName(name: string, ending: string): string {
  const stem = name
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "")
    .slice(0, LONGEST_NAME);
  return `${stem === "" ? "rig" : stem}.${ending}`;
}
