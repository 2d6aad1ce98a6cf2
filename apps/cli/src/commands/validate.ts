/** `validate`: names the kind of a file and finds every fault in it. */
import { extname } from "node:path";
import { sayValidate } from "@secondline/words/terminal/validate";
import type { AssessmentOptions } from "../assessment.ts";
import { CommandFailure, EXIT } from "../failure.ts";
import { type JsonFile, LARGEST_BYTES, readJsonFile } from "../input.ts";
import { print } from "../terminal.ts";

/** `options`: the other inputs of a rig, which must fit the rig. */
export async function validate(file: string, options: AssessmentOptions = {}): Promise<void> {
  if (extname(file).toLowerCase() === ".csv") return validateBreakLog(file);
  const json = readJsonFile(file, Math.max(...Object.values(LARGEST_BYTES)));
  switch (kindOf(json.document)) {
    case "rig":
      return validateRig(json, options);
    case "wear":
      return validateWear(json);
    case "problem":
      return validateProblem(json);
    case undefined:
      throw new CommandFailure(EXIT.input, [sayValidate("unknown", { file })]);
  }
}

function kindOf(document: unknown): "rig" | "wear" | "problem" | undefined {
  if (typeof document !== "object" || document === null || Array.isArray(document)) return undefined;
  const tag = (document as Record<string, unknown>).secondline;
  if (typeof tag === "string") return tag.startsWith("wear") ? "wear" : "rig";
  return "span" in document && "main" in document ? "problem" : undefined;
}

async function validateRig({ file, text }: JsonFile, options: AssessmentOptions): Promise<void> {
  const { rigOf } = await import("../rigFile.ts");
  const rig = rigOf(file, text);
  // Reads the rig again with its other inputs, and tells all that do not fit.
  const { readAssessment } = await import("../assessment.ts");
  if (Object.values(options).flat().length > 0) readAssessment(file, options);
  print(sayValidate("rig", { file, name: rig.name }));
}

async function validateProblem(json: JsonFile): Promise<void> {
  const { problemOf } = await import("../problemFile.ts");
  print(sayValidate("problem", { file: json.file, name: problemOf(json).name }));
}

async function validateWear({ file, text }: JsonFile): Promise<void> {
  const { wearOf } = await import("../wearFile.ts");
  wearOf(file, text);
  print(sayValidate("wear", { file }));
}

async function validateBreakLog(file: string): Promise<void> {
  const { readBreakLogFile } = await import("../breakLogFile.ts");
  const tests = readBreakLogFile(file);
  print(sayValidate("breakLog", { file, count: tests.length }));
}
