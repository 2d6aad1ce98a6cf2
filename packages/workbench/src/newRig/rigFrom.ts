/** The rig that follows from answers: its document, what in it nobody has confirmed, and what is wrong or doubtful. */
import {
  fieldAt,
  mayBeOfAll,
  parseQuantity,
  type Rig,
  type RigDocument,
  type RigIssue,
  readRig,
  sameFact,
} from "@secondline/rig";
import { lowestProfile } from "../ground/lowest.ts";
import { shareAt } from "../side/connections.ts";
import { ANSWER_IDS, ANSWERS, type AnswerId, type Answers, answerOf, QUESTIONS, type QuestionId } from "./answers.ts";
import { answerDoubts } from "./doubts.ts";
import type { AnswerDoubt, AnswerPlace, FaultKind, NewRigFault } from "./fault.ts";
import { patternOf, valuesOf } from "./marks.ts";
import { readPlaces } from "./places.ts";
import { rigFromAnswers, type Said, type SaidAnchor } from "./template.ts";

export interface NewRig {
  /** The rig with its marks. An answer that cannot be read stands as typed, or as in the template. */
  readonly document: RigDocument;
  /** Undefined while there is a fault. */
  readonly rig: Rig | undefined;
  readonly unconfirmed: readonly string[];
  readonly faults: readonly NewRigFault[];
  readonly doubts: readonly AnswerDoubt[];
}

/** Throws nothing: whatever is wrong is told. */
export function rigFrom(answers: Answers): NewRig {
  const faults: NewRigFault[] = [];
  const bare = rigFromAnswers(said(answers, faults));
  const confirmed = confirmedPaths(answers);
  const unconfirmed = valuesOf(bare).filter((path) => !confirmed.has(path === "ground" ? path : patternOf(path)));
  const document = unconfirmed.length > 0 ? { ...bare, unconfirmed: [...unconfirmed] } : bare;
  const read = readRig(document);
  if (!read.ok) {
    for (const issue of read.issues) {
      const place = placeOf(issue.path, answers);
      if (faults.some((one) => isSame(one, place, issue))) continue;
      faults.push({ kind: "issue", place, issue, ...remedyOf(place, answers) });
    }
  }
  const good = read.ok && faults.length === 0;
  return {
    document,
    rig: good ? read.rig : undefined,
    unconfirmed,
    faults,
    doubts: good ? answerDoubts(answers, read.rig) : [],
  };
}

/** One answer may stand at many places of the document. */
const isSame = (one: NewRigFault, place: AnswerPlace, issue: RigIssue): boolean =>
  one.kind === "issue" && one.place === place && place !== "rig" && sameFact(one.issue.message, issue.message);

/** Values that are confirmed as patterns: by every answer that names them, or by their question as a whole. */
function confirmedPaths(answers: Answers): ReadonlySet<string> {
  const isDrawn = (id: string) => answers.drawn?.some((one) => one === id) ?? false;
  const sure = (id: AnswerId) => (answers[id] !== undefined && !isDrawn(id)) || isConfirmed(answers, questionOf(id));
  const named = new Map<string, AnswerId[]>();
  for (const id of ANSWER_IDS) {
    for (const path of ANSWERS[id].confirms) named.set(path, [...(named.get(path) ?? []), id]);
  }
  const paths = [...named].filter(([, ids]) => ids.every(sure)).map(([path]) => path);
  const ground = (answers.profile !== undefined && !isDrawn("ground")) || isConfirmed(answers, "ground");
  return new Set(ground ? [...paths, "ground"] : paths);
}

const isConfirmed = (answers: Answers, question: QuestionId): boolean => answers.confirmed?.includes(question) ?? false;

export const questionOf = (answer: AnswerId): QuestionId =>
  QUESTIONS.find(({ answers }) => (answers as readonly AnswerId[]).includes(answer))!.id;

const metres = (text: string, otherwise: number): number => {
  const read = parseQuantity(text, "length");
  return read.ok && read.value !== 0 ? read.value : otherwise;
};

function said(answers: Answers, faults: NewRigFault[]): Said {
  const of = (id: AnswerId) => answerOf(answers, id).trim();
  const site = { span: metres(of("span"), 50), rise: metres(of("rise"), 0) };
  const age = ageOf(of, faults);
  return {
    name: of("name"),
    span: of("span"),
    rise: of("rise"),
    ground: groundOf(answers, of, site, faults),
    stocks: answers.stocks as RigDocument["stocks"],
    webbing: of("webbing"),
    tension: of("tension"),
    backup: backupOf(answers, of, site.span, faults),
    anchorA: anchorOf("A", answers, of, faults),
    anchorB: anchorOf("B", answers, of, faults),
    rope: of("rope"),
    leashLength: of("leashLength"),
    knot: of("knot"),
    mass: of("mass"),
    latitude: of("latitude"),
    ...age,
  };
}

type Of = (id: AnswerId) => string;

function groundOf(answers: Answers, of: Of, site: { span: number; rise: number }, faults: NewRigFault[]) {
  if (answers.profile) return answers.profile.map((point): [string, string] => [...point]);
  const read = lowestProfile(of("lowest"), of("lowestAt"), of("shape"), site);
  if (read.ok) return read.profile.map((point): [string, string] => [...point]);
  const { at: place, kind, values, remedy } = read;
  faults.push({ kind, place, values, ...(remedy === undefined ? {} : { remedy }) });
  return lowestOrNone(site);
}

/** Something to draw while the answer is being put right; the fault keeps it from being taken for a rig. */
function lowestOrNone(site: { span: number; rise: number }): [string, string][] {
  const read = lowestProfile(`${Math.abs(site.rise) + 25} m`, "middle", "slopes", site);
  return read.ok ? read.profile.map((point): [string, string] => [...point]) : [];
}

const WORDS_FOR_NO = ["no", "none", "without"];

function backupOf(answers: Answers, of: Of, span: number, faults: NewRigFault[]): Said["backup"] {
  const answer = of("backup").toLowerCase();
  if (WORDS_FOR_NO.includes(answer)) return undefined;
  if (answer !== "yes") own(faults, "yesNo", "backup", { got: of("backup") }, "yes");
  const read = readPlaces(of("connections"), span);
  if (!read.ok) own(faults, read.kind, "connections", read.values, read.remedy);
  return {
    webbing: of("backupWebbing"),
    slack: of("slack"),
    connections: read.ok ? read.metres.map((at) => shareAt(at, span)) : [],
    strength: of("connectionStrength"),
    strengthSaid: answers.connectionStrength !== undefined,
  };
}

function anchorOf(side: "A" | "B", answers: Answers, of: Of, faults: NewRigFault[]): SaidAnchor {
  const [points, kind, strength, legAngle] = [
    `points${side}`,
    `kind${side}`,
    `strength${side}`,
    `legAngle${side}`,
  ] as const;
  const count = Number(of(points));
  const good = /^\d+$/.test(of(points)) && count >= 1 && count <= 12;
  if (!good) own(faults, "points", points, { got: of(points) }, "2");
  return {
    points: good ? count : 2,
    kind: of(kind),
    strength: of(strength),
    strengthSaid: answers[strength] !== undefined,
    legAngle: of(legAngle),
  };
}

function ageOf(of: Of, faults: NewRigFault[]): Pick<Said, "condition" | "isNew"> {
  const [age, outside, sun] = [of("age"), of("outside"), of("sun")];
  if (age.toLowerCase() === "new") return { condition: { age: "0 months", outside: "0 months" }, isNew: true };
  const read = age === "" ? undefined : parseQuantity(age, "time");
  if (read && !read.ok) own(faults, "age", "age", { got: age }, "new");
  const condition = {
    ...(age === "" || !read?.ok ? {} : { age }),
    ...(outside === "" ? {} : { outside }),
    ...(sun === "" ? {} : { sun }),
  };
  return { condition: Object.keys(condition).length > 0 ? condition : undefined, isNew: false };
}

function own(
  faults: NewRigFault[],
  kind: FaultKind,
  place: AnswerPlace,
  values: Readonly<Record<string, string | number>>,
  remedy?: string,
): void {
  faults.push({ kind, place, values, ...(remedy === undefined ? {} : { remedy }) });
}

/** The answer that a value of the document comes from. */
function placeOf(path: string, answers: Answers): AnswerPlace {
  if (path.startsWith("ground")) return answers.profile ? "profile" : "lowest";
  if (path.startsWith("stocks")) return "stocks";
  // The condition of one part is that of all.
  const shared = path.replace(/^.*\.condition\./, "leash.condition.");
  if (shared === "leash.condition.age") return "age";
  const pattern = patternOf(shared);
  return (
    ANSWER_IDS.find((id) => {
      const answer = ANSWERS[id];
      return answer.kind === "field" ? answer.field === pattern : answer.confirms.some((one) => one === pattern);
    }) ?? "rig"
  );
}

const UNIT_OF_ANSWER: Readonly<Partial<Record<string, string>>> = {
  length: "m",
  force: "kN",
  mass: "kg",
  share: "%",
  angle: "deg",
};

/** A number without its unit: with the usual one it would do. */
function remedyOf(place: AnswerPlace, answers: Answers): { readonly remedy?: string } {
  if (place === "profile" || place === "stocks" || place === "rig") return {};
  const text = answerOf(answers, place).trim();
  const answer = ANSWERS[place];
  if (answer.kind !== "field" || !/^[-+]?\d+(?:\.\d+)?$/.test(text)) return {};
  const unit = unitFor(Number(text), answer.field);
  return unit === undefined ? {} : { remedy: `${text} ${unit}` };
}

/** None where the number may mean two things. */
function unitFor(number: number, path: string): string | undefined {
  const field = fieldAt(path);
  if (field?.kind !== "quantity" || mayBeOfAll(number, field.dimension)) return undefined;
  return UNIT_OF_ANSWER[field.dimension];
}
