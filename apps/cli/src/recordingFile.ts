/** Reads a load cell's recording; every fault names its line and column. */
import { type MeasuredFall, readRecording } from "@secondline/scenarios";
import { sayFiles } from "@secondline/words/terminal/files";
import { faultAt, faultLines, inBroughtWords, LARGEST_BYTES, readText } from "./input.ts";

export const readRecordingFile = (file: string): MeasuredFall =>
  recordingOf(file, readText(file, LARGEST_BYTES.recording));

export function recordingOf(file: string, text: string): MeasuredFall {
  const reading = readRecording(text);
  if (reading.ok) return reading.fall;
  throw faultLines(
    (count) => sayFiles("faults.recording", { file, count }),
    { issues: reading.faults.map(inBroughtWords) },
    faultAt,
  );
}
