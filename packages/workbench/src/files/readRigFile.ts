/** Reads a rig document from a user's file, or says in words why it cannot. Never touches the current work. */
import type { Issues, RigIssue } from "@secondline/rig";
import { sayFiles } from "@secondline/words/page/files";
import type { WrittenRig } from "../documents/documents.ts";
import type { ReadRig } from "../inHand/state.ts";
import { wrongInIt } from "./issueLines.ts";

export type Opened =
  | { readonly ok: true; readonly document: WrittenRig }
  | ({ readonly ok: false; readonly text: string } & Issues<RigIssue>);

/** A rig file is a few kilobytes; what is larger than this is something else and is not even read [B]. */
const LARGEST_FILE_BYTES = 1_000_000;

interface FileLike {
  readonly name: string;
  readonly size: number;
  text(): Promise<string>;
}

export async function readRigFile(file: FileLike, read: ReadRig): Promise<Opened> {
  if (file.size > LARGEST_FILE_BYTES) {
    return no(sayFiles("readFile.tooLarge", { name: file.name, size: size(file.size) }));
  }
  let text: string;
  try {
    text = await file.text();
  } catch {
    return no(sayFiles("readFile.couldNotRead", { name: file.name }));
  }
  return readRigText(text, file.name, read);
}

/** `name`: what to call the source in messages, e.g. the file's name or "The rig in this link". */
export function readRigText(text: string, name: string, read: ReadRig): Opened {
  const result = read(text);
  if (result.ok) return { ok: true, document: result.document };
  return { ...result, text: sayFiles("readFile.notOpened", { name, wrongInIt: wrongInIt(result) }) };
}

const no = (text: string): Opened => ({ ok: false, text, issues: [] });

function size(bytes: number): string {
  return bytes < 1e6 ? `${Math.round(bytes / 1000)} kB` : `${Math.round(bytes / 1e6)} MB`;
}
