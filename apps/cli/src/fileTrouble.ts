/** What the system says about a file, in plain words. */

const codeOf = (error: unknown) => (error as { readonly code?: string }).code;
const otherwise = (error: unknown) => (error instanceof Error ? error.message : String(error));

/** Why a file could not be read. */
export function readTrouble(error: unknown): string {
  switch (codeOf(error)) {
    case "ENOENT":
      return "there is no such file";
    case "EISDIR":
      return "this is a folder, not a file";
    case "EACCES":
    case "EPERM":
      return "this file may not be read";
    default:
      return otherwise(error);
  }
}

/** Why a file could not be written. */
export function writeTrouble(error: unknown): string {
  switch (codeOf(error)) {
    case "ENOENT":
      return "there is no such folder";
    case "ENOTDIR":
      return "a part of this path is a file, not a folder";
    case "ENOSPC":
      return "no space is left on the device";
    case "EDQUOT":
      return "your share of the disk is used up";
    case "EFBIG":
      return "the file would be larger than is allowed here";
    case "EROFS":
      return "this disk may only be read";
    case "EACCES":
    case "EPERM":
      return "you may not write here";
    case "ENAMETOOLONG":
      return "this name is too long";
    default:
      return otherwise(error);
  }
}
