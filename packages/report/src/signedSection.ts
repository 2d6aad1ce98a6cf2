/**
 * Who entered the rig, who inspected which part, and on which day, as far as it is known. Lines to fill by hand for the rest.
 */
import type { PartId } from "@secondline/rig";
import { dayText } from "@secondline/words/dates";
import { type Content, type Html, tableOf, tag } from "./html.ts";
import type { ReportPage } from "./page.ts";

/** An inspection in the record. */
export interface Inspected {
  readonly of: { readonly webbing: string } | { readonly part: string };
  readonly by: string;
  /** YYYY-MM-DD */
  readonly on: string;
  readonly judgement: "sound" | "doubtful" | "unfit";
  readonly found: string;
}

const WRITING_SPACE = "";
/** Parts to inspect by hand, whatever the record says. */
const ALWAYS_ASKED = ["main", "backup", "anchorA", "anchorB", "leash", "ground"] as const;

export function signedSection({ words, rig }: ReportPage, inspected: readonly Inspected[]): readonly Html[] {
  const { say } = words;
  const asked = ALWAYS_ASKED.filter((one) => one !== "backup" || rig.backup !== undefined);
  const rows: readonly (readonly Content[])[] = [
    [say("signed.entered"), WRITING_SPACE, WRITING_SPACE, WRITING_SPACE],
    ...inspected.map(({ of, by, on, judgement, found }): Content[] => [
      "webbing" in of ? of.webbing : words.partName(rig, of.part as PartId),
      by,
      dayText(on),
      say(`signed.found.${judgement}`, { found }),
    ]),
    ...asked.map((one): Content[] => [say(`signed.${one}`), WRITING_SPACE, WRITING_SPACE, WRITING_SPACE]),
    [say("signed.mayUse"), WRITING_SPACE, WRITING_SPACE, WRITING_SPACE],
  ];
  const heads = [say("signed.what"), say("signed.who"), say("signed.day"), say("signed.sign")];
  return [
    tag("section", [tag("h2", say("signed.head")), tableOf(say("signed.caption"), heads, rows, [], "signed")], {
      class: "signed",
    }),
  ];
}
