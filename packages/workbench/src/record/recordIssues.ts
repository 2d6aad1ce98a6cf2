/** Faults of the record as a form tells them: its fields have labels, not paths. */

import { sayBreakLog } from "@secondline/words/page/breakLog";
import type { RecordIssue } from "../wear/wearStore.ts";
import { PART_KINDS, WEBBING_KINDS } from "./entryKinds.ts";

/** Messages of a field and of what lies under it. */
export const messagesUnder = (issues: readonly RecordIssue[], path: string): string[] =>
  issues
    .filter((issue) => issue.path === path || issue.path.startsWith(`${path}[`) || issue.path.startsWith(`${path}.`))
    .map(inWords);

const LABELS = new Map([...WEBBING_KINDS, ...PART_KINDS].map(({ event, label }) => [event, label]));

/** A message that opens with the path of its field says "This" instead; entries are called what the form calls them. */
export function inWords({ path, message }: RecordIssue): string {
  if (path !== "" && message.startsWith(`${path} is "";`)) return sayBreakLog("issues.empty");
  const short =
    path !== "" && message.startsWith(`${path} `)
      ? sayBreakLog("issues.sentence", { message: message.slice(path.length + 1) })
      : message;
  return short.replace(/^"(\w+)"/, (whole, event: string) => (LABELS.has(event) ? `“${LABELS.get(event)}”` : whole));
}

/** The same outside of a form, where "This" would say nothing: which entry, then the message. */
export function whereAndWhat(issue: RecordIssue): string {
  const words = inWords(issue);
  const [, list, owner, entry] = /^(webbings|parts)\[(\d+)\](?:\.entries\[(\d+)\])?/.exec(issue.path) ?? [];
  if (list === undefined || words === issue.message) return words;
  const of = list === "webbings" ? "webbings" : "parts";
  const values = { number: Number(owner) + 1, fault: words };
  if (entry === undefined) return sayBreakLog(`issues.${of}`, values);
  return sayBreakLog(`issues.entry.${of}`, { ...values, entry: Number(entry) + 1 });
}
