/** What the numbers were checked against, part by part: theory, other programs, strengths, and falls that somebody measured. */
import { CONSTANTS } from "@secondline/strength";
import { sayEvidence } from "@secondline/words/page/evidence";
import kept from "./evidence.json" with { type: "json" };

/** The kept record of all checks, counted. */
export type EvidenceSummary = typeof kept;

export interface EvidencePart {
  readonly title: string;
  /** Between backquotes stands what is typed. */
  readonly says: string;
  readonly list?: {
    readonly title: string;
    readonly items: readonly { readonly what: string; readonly how: string }[];
  };
}

/** How the checks are counted: those against numbers from outside, by where these come from, and the others. */
export function checksCounted(): string {
  const { counts } = kept;
  const { kinds } = counts;
  return sayEvidence("evidenceSheet.checksAgainstNumbers", {
    outside: counts.outside,
    printed: kinds.printed,
    secondHand: kinds["second hand"],
    memory: kinds["from memory"],
    programs: kinds["other program"],
    lineProgram: counts.lineProgram,
    computed: kinds.computed,
    disagree: counts.disagree,
  });
}

export function evidenceParts(summary: EvidenceSummary = kept): readonly EvidencePart[] {
  const { constants } = summary.counts;
  return [
    {
      title: sayEvidence("evidenceSheet.theory"),
      says: sayEvidence("evidenceSheet.closedFormsPrinted"),
      list: sourcesOf(summary, "theory"),
    },
    {
      title: sayEvidence("evidenceSheet.otherPrograms"),
      says: sayEvidence("evidenceSheet.sameProblemsSolved"),
      list: sourcesOf(summary, "programs"),
    },
    {
      title: sayEvidence("evidenceSheet.strengths"),
      says: sayEvidence("evidenceSheet.whatPartStill", {
        strengths: CONSTANTS.size,
        published: constants.published,
        secondHand: constants["seen second hand"],
        memory: constants["from memory"],
        assumed: constants.assumed,
      }),
      list: strengthsNotAssumed(),
    },
    { title: sayEvidence("evidenceSheet.validation"), says: sayEvidence("evidenceSheet.noneYetAgainst") },
  ];
}

function sourcesOf({ sources }: EvidenceSummary, part: string): NonNullable<EvidencePart["list"]> {
  const own = sources.filter((source) => source.part === part);
  return {
    title: sayEvidence("evidenceSheet.sources", { count: own.length }),
    items: own.map(({ title, year, kind, checks, most, disagree }) => ({
      what: `${title} (${year})`,
      how: sayEvidence(disagree > 0 ? "evidenceSheet.checksDisagree" : "evidenceSheet.checksToleranceUsed", {
        kind,
        checks,
        percent: `${Math.ceil(100 * most)} %`,
        disagree,
      }),
    })),
  };
}

function strengthsNotAssumed(): NonNullable<EvidencePart["list"]> {
  const known = [...CONSTANTS.values()].filter(({ status }) => status !== "assumed");
  return {
    title: sayEvidence("evidenceSheet.notAssumed", { count: known.length }),
    items: known.map(({ value, unit, status, meaning }) => ({
      what: meaning,
      how: `${`${value} ${unit}`.trim()}; ${status}`,
    })),
  };
}
