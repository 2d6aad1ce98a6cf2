/** Forces over time as a file. Made in pieces with a pause between them, so that the page stays alive. */
import type { Recording } from "@secondline/engine";
import { csvChunks, type TimeRange } from "@secondline/figures/time";
import { sayTime } from "@secondline/words/page/time";
import { fileName } from "@secondline/workbench";
import { downloadBlob } from "../device/download.ts";

export async function saveTraces(recording: Recording, range: TimeRange, name: string): Promise<void> {
  const pieces: string[] = [];
  for (const piece of csvChunks(recording, range)) {
    pieces.push(piece);
    await new Promise((resolve) => setTimeout(resolve));
  }
  downloadBlob(new Blob(pieces, { type: "text/csv" }), fileName(sayTime("saveTraces.forces", { name }), "csv"));
}
