export { issueLines } from "./issueLines.ts";
export { makeReport } from "./makeReport.ts";
export { type Opened, readRigFile, readRigText } from "./readRigFile.ts";
