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
