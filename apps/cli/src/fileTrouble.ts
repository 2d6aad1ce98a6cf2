/** The system's errors about a file, in plain words. */
import { sayFiles } from "@secondline/words/terminal/files";

const codeOf = (error: unknown) => (error as { readonly code?: string }).code;
const systemMessage = (error: unknown) => (error instanceof Error ? error.message : String(error));

/** Why a file could not be read. */
export function readTrouble(error: unknown): string {
  switch (codeOf(error)) {
    case "ENOENT":
      return sayFiles("unread.noFile");
    case "EISDIR":
      return sayFiles("unread.folder");
    case "EACCES":
    case "EPERM":
      return sayFiles("unread.notAllowed");
    default:
      return systemMessage(error);
  }
}

/** Why a file could not be written. */
export function writeTrouble(error: unknown): string {
  switch (codeOf(error)) {
    case "ENOENT":
      return sayFiles("unwritten.noFolder");
    case "ENOTDIR":
      return sayFiles("unwritten.fileInPath");
    case "ENOSPC":
      return sayFiles("unwritten.diskFull");
    case "EDQUOT":
      return sayFiles("unwritten.shareFull");
    case "EFBIG":
      return sayFiles("unwritten.tooLarge");
    case "EROFS":
      return sayFiles("unwritten.readOnly");
    case "EACCES":
    case "EPERM":
      return sayFiles("unwritten.notAllowed");
    case "ENAMETOOLONG":
      return sayFiles("unwritten.nameTooLong");
    default:
      return systemMessage(error);
  }
}
