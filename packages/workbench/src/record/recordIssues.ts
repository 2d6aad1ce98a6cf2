/** Faults of the record as a form tells them: its fields have labels, not paths. */
import type { RecordIssue } from "@secondline/strength";
import { tellFault } from "@secondline/words/faults";
import { sayBreakLog } from "@secondline/words/page/breakLog";
import { PART_KINDS, WEBBING_KINDS } from "./entryKinds.ts";

/** Messages of a field and of what lies under it. */
export const messagesUnder = (issues: readonly RecordIssue[], path: string): string[] =>
  issues
    .filter((issue) => issue.path === path || issue.path.startsWith(`${path}[`) || issue.path.startsWith(`${path}.`))
    .map(inWords);

const LABELS: ReadonlyMap<string, string> = new Map(
  [...WEBBING_KINDS, ...PART_KINDS].map(({ event, label }) => [event, label]),
);

/** A field is "this" here, for it stands beside what is said; entries are called what the form calls them. */
export function inWords({ message }: RecordIssue): string {
  switch (message.code) {
    case "form.field": {
      const { got, expected } = message.values;
      if (got === '""') return sayBreakLog("issues.empty");
      return sayBreakLog("issues.field", { got: tellFault(got), expected: tellFault(expected) });
    }
    case "part.notUp":
    case "event.notRigged":
    case "event.rigged":
      return tellFault({ ...message, values: { event: quotedLabel(message.values.event) } });
    case "firstUse.usedBefore":
      return tellFault({ ...message, values: { ...message.values, event: quotedLabel(message.values.event) } });
    default:
      return tellFault(message);
  }
}

/** `quoted`: the name of an event in quotation marks. */
function quotedLabel(quoted: string): string {
  const label = LABELS.get(quoted.slice(1, -1));
  return label === undefined ? quoted : `“${label}”`;
}

/** The same outside of a form, where "This" would say nothing: which entry, then the message. */
export function whereAndWhat(issue: RecordIssue): string {
  const words = inWords(issue);
  const [, list, owner, entry] = /^(webbings|parts)\[(\d+)\](?:\.entries\[(\d+)\])?/.exec(issue.path) ?? [];
  if (list === undefined || words === tellFault(issue.message)) return words;
  const of = list === "webbings" ? "webbings" : "parts";
  const values = { number: Number(owner) + 1, fault: words };
  if (entry === undefined) return sayBreakLog(`issues.${of}`, values);
  return sayBreakLog(`issues.entry.${of}`, { ...values, entry: Number(entry) + 1 });
}
