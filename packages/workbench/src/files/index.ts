export { issueLines } from "./issueLines.ts";
export { type Opened, readRigFile, readRigText } from "./readRigFile.ts";
