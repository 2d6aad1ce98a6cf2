/** Kinds of rig files, as of an input's `accept`. */
export const RIG_FILES = ".json,application/json";

/** Lets a person choose one file of the kinds in `accept` (as of an input's attribute); nothing happens where none is chosen. */
export function chooseFile(accept: string, open: (file: File) => Promise<void>): void {
  const input = document.createElement("input");
  input.type = "file";
  input.accept = accept;
  input.addEventListener("change", () => {
    const file = input.files?.[0];
    if (file) void open(file);
  });
  input.click();
}
