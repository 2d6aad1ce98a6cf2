/** Known errors of published versions: a dated list that is kept after a version is out, so that who runs it is told. SECURITY.md says how one gets there. */
import { isGroup } from "@secondline/rig";
import builtIn from "./errata.json" with { type: "json" };

export const ERRATA_FORMAT = "secondline/errata/1";

export interface Erratum {
  /** Day on which it was told, YYYY-MM-DD. */
  readonly date: string;
  /** First and last version that has it, such as 0.1.0. */
  readonly from: string;
  readonly to: string;
  /** Which numbers are wrong, in which direction, by how much. */
  readonly what: string;
  /** What to do about it. */
  readonly remedy: string;
}

const VERSION = /^(\d{1,6})\.(\d{1,6})\.(\d{1,6})$/;
const DAY = /^\d{4}-\d\d-\d\d$/;

/** The list in a document that was fetched or read; `undefined` when it is none. Nothing in it is taken on trust. */
export function readErrata(document: unknown): readonly Erratum[] | undefined {
  if (!isGroup(document) || document.format !== ERRATA_FORMAT || !Array.isArray(document.errata)) return undefined;
  const errata: readonly unknown[] = document.errata;
  return errata.every(isErratum) ? errata : undefined;
}

function isErratum(value: unknown): value is Erratum {
  if (!isGroup(value)) return false;
  const { date, from, to, what, remedy } = value;
  const isVersion = (one: unknown) => typeof one === "string" && VERSION.test(one);
  const isText = (one: unknown) => typeof one === "string" && one.trim() !== "";
  return (
    typeof date === "string" && DAY.test(date) && isVersion(from) && isVersion(to) && isText(what) && isText(remedy)
  );
}

/** The errata of a version, the newest first. */
export function errataOf(version: string, errata: readonly Erratum[]): readonly Erratum[] {
  return errata
    .filter(({ from, to }) => compared(from, version) <= 0 && compared(version, to) <= 0)
    .sort((a, b) => b.date.localeCompare(a.date));
}

/** Negative when `a` is the older version. */
function compared(a: string, b: string): number {
  const [one, other] = [a, b].map((text) => VERSION.exec(text)?.slice(1).map(Number) ?? [0, 0, 0]);
  for (let i = 0; i < 3; i++) if (one![i] !== other![i]) return one![i]! - other![i]!;
  return 0;
}

/** Known when this version was built; a list that is served may have more. */
export const KNOWN_ERRATA: readonly Erratum[] = readErrata(builtIn) ?? [];
