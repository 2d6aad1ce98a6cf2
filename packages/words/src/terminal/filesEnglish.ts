/** Sentences of the terminal on files that it reads and writes. No page loads it. */
export const FILES_ENGLISH = {
  // Why a file cannot be read
  "unread.noFile": "there is no such file",
  "unread.folder": "this is a folder, not a file",
  "unread.notAllowed": "this file may not be read",
  "unread.shrunk": "the file has become shorter",
  "unread.changed": "{file}: the file changed while it was read.",
  "unread.tooLarge": "{file}: {size} is too large; a file of this kind has at most {most}.",
  "unread.tooLong": "{file}: more than {most} is too large; a file of this kind has at most {most}.",
  "unread.notUtf8": "{file}: this file is not in UTF-8. Save it again with the encoding UTF-8.",
  "unread.utf16": "{file}: this file is not in UTF-8 but in UTF-16. Save it again with the encoding UTF-8.",

  // Kinds of files
  "noun.anyOfOurs": "a file of ours",
  "noun.matching": "a matching of columns",
  "noun.plan": "a plan",
  "noun.problem": "a problem",

  // Faults in a file
  "faults.document": "{file}: {count|one fault|{count} faults}",
  "faults.breakLog": "{file}: {count|one fault|{count} faults}; nothing was read",
  "faults.recording": "{file}: {count|one fault|{count} faults}; nothing was compared",
  "fault.atLine": "line {line}: {fault}",
  "fault.atCell": "line {line}, {column}: {fault}",
  "fault.wholeFile": "(the file)",
  "fault.unworded": "Got {got}; expected {expected}.",
  "fault.got": "{message} Got {got}.",
  "fault.expected": "{message} Expected {expected}.",
  "fault.gotExpected": "{message} Got {got}; expected {expected}.",

  // Why a file cannot be written
  "unwritten.noFolder": "there is no such folder",
  "unwritten.fileInPath": "a part of this path is a file, not a folder",
  "unwritten.diskFull": "no space is left on the device",
  "unwritten.shareFull": "your share of the disk is used up",
  "unwritten.tooLarge": "the file would be larger than is allowed here",
  "unwritten.readOnly": "this disk may only be read",
  "unwritten.notAllowed": "you may not write here",
  "unwritten.nameTooLong": "this name is too long",
  "unwritten.noName": "{file}: this is empty; name the file to write, such as report.html.",
  "unwritten.folder": "{file}: this is a folder; name a file in it.",
  "unwritten.notOrdinary": "{file}: this is not an ordinary file.",
  "unwritten.input": "{file}: this is the input {input}, which is not overwritten; take another name.",
  "unwritten.exists": "{file}: this file exists already; --force overwrites it.",
  "unwritten.danglingLink": "{file}: this is a link that leads nowhere.",
  "unwritten.place": "{file}: {why}.",
  "unwritten.file": "{file}: the file could not be written: {why}.",
  "unwritten.output": "The output could not be written: {why}.",
} as const;
