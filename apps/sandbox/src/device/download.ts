/** Hands a text to the browser as a file to keep. */
export function download(text: string, fileName: string, type: string): void {
  downloadBlob(new Blob([text], { type }), fileName);
}

export function downloadBlob(blob: Blob, fileName: string): void {
  const url = URL.createObjectURL(blob);
  const anchor = document.createElement("a");
  anchor.href = url;
  anchor.download = fileName;
  anchor.click();
  // The download has taken its own hold of the data by then.
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

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
