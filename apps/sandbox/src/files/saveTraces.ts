/** Forces over time as a file. Made in pieces with a pause between them, so that the page stays alive. */
import type { Recording } from "@secondline/engine";
import { csvChunks, type TimeRange } from "@secondline/figures/time";
import { sayPage } from "@secondline/words/page/page";
import { downloadBlob, fileName } from "../device/download.ts";

export async function saveTraces(recording: Recording, range: TimeRange, name: string): Promise<void> {
  const pieces: string[] = [];
  for (const piece of csvChunks(recording, range)) {
    pieces.push(piece);
    await new Promise((resolve) => setTimeout(resolve));
  }
  downloadBlob(new Blob(pieces, { type: "text/csv" }), fileName(sayPage("saveTraces.forces", { name }), "csv"));
}
