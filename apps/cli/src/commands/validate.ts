/** `validate`: says what kind of file it is and finds every fault in it. */
import { extname } from "node:path";
import { CommandFailure, EXIT } from "../failure.ts";
import { faults, readJson, readText } from "../input.ts";
import { print } from "../terminal.ts";

export async function validate(file: string): Promise<void> {
  if (extname(file).toLowerCase() === ".csv") return validateBreakLog(file);
  const document = readJson(file);
  const kind = kindOf(document);
  if (kind === "rig") return validateRig(file);
  if (kind === "wear") return validateWear(file);
  if (kind === "problem") return validateProblem(file, document);
  throw new CommandFailure(EXIT.input, [
    `${file}: this is JSON, but none of ours. Expected a rig ("secondline": "rig/1"), a wear record, or a problem (with span, main, leash …).`,
  ]);
}

function kindOf(document: unknown): "rig" | "wear" | "problem" | undefined {
  if (typeof document !== "object" || document === null || Array.isArray(document)) return undefined;
  const tag = (document as Record<string, unknown>).secondline;
  if (typeof tag === "string") return tag.startsWith("wear") ? "wear" : "rig";
  return "span" in document && "main" in document ? "problem" : undefined;
}

async function validateRig(file: string): Promise<void> {
  const { readRigFile } = await import("../rigFile.ts");
  const rig = readRigFile(file);
  print(`${file}: a rig, "${rig.name}"; no fault in the document. Whether the rig holds, check tells.`);
}

async function validateProblem(file: string, document: unknown): Promise<void> {
  const { readProblem } = await import("@secondline/engine");
  const reading = readProblem(document);
  if (!reading.ok) throw faults(file, reading.issues);
  print(`${file}: a problem, "${reading.problem.name}"; no fault found.`);
}

async function validateWear(file: string): Promise<void> {
  const { readWearFile } = await import("../wearFile.ts");
  readWearFile(file);
  print(`${file}: a wear record; no fault found.`);
}

async function validateBreakLog(file: string): Promise<void> {
  const { readBreakLogFile } = await import("../breakLogFile.ts");
  const tests = readBreakLogFile(file, readText(file));
  print(`${file}: a break log of ${tests.length} tests; no fault found.`);
}
