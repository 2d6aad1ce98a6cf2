/** What is asked of "How far can I go?", the sweep that answers it, and the value that is looked at; kept while the page shows something else. */
import { isGroup, type Rig, readRig } from "@secondline/rig";
import type { Progress, SweepAnswer, SweepRequest, SweepService } from "@secondline/runner";
import {
  type Assessed,
  type BadPoint,
  inputHash,
  isApart,
  type Knob,
  type PointsQuestion,
  type SweepWhat,
  type Swept,
  type SweptRig,
  sweptRigs,
  VERSION,
} from "@secondline/scenarios";
import { createStore, type StoreApi } from "zustand/vanilla";
import type { WrittenRig } from "../documents/documents.ts";
import { evidenceFor } from "../inHand/known.ts";
import type { Sandbox } from "../inHand/sandbox.ts";
import type { SandboxState } from "../inHand/state.ts";
import { type Job, STOPPED, type TaskAnswer } from "../job/job.ts";
import { JobSlot } from "../job/jobSlot.ts";
import { Newest } from "../newest.ts";
import { documentAt } from "./candidate.ts";
import { sweepNumbers } from "./numbers.ts";
import { firstAsked, type HowFarAsked, type HowFarQuestion, type HowFarReading, readHowFar } from "./question.ts";

/** Whose number is swept: the open rig, or a layout with its letter. */
export interface Subject {
  readonly sandbox: Sandbox;
  readonly letter?: string;
}
export type Preset = "loosest" | "fewest";

/** A sweep with all that its words and its points need. */
export interface FoundSweep {
  readonly key: string;
  readonly swept: Swept;
  /** The document that was swept, as written. */
  readonly document: WrittenRig;
  readonly assessed: Assessed;
  /** `assessment.key` of the state. */
  readonly of: string;
  /** A rig in which every part that the sweep speaks of has a name. */
  readonly named: Rig;
}

type SweptOrNot =
  | { readonly kind: "swept"; readonly found: FoundSweep }
  /** Every run was made, and there is no curve. */
  | { readonly kind: "not"; readonly nothing: NoCurve };

export interface NoCurve {
  readonly answer: Exclude<SweepAnswer, { kind: "swept" }>;
  /** The quantity that was asked for. */
  readonly what: SweepWhat;
}

export interface HowFarState {
  readonly subject: Subject;
  readonly asked: HowFarAsked;
  readonly preset: Preset | undefined;
  readonly work: Job<SweptOrNot, Progress>;
  readonly found: FoundSweep | undefined;
  /** Why there is no curve though every run was made. */
  readonly nothing: NoCurve | undefined;
  /** Values of the point that is looked at. */
  readonly at: readonly number[] | undefined;
}

/** So many sweeps are kept for questions that come back; the oldest is dropped first [-]. */
const MOST_KEPT_SWEEPS = 8;

export class HowFarDesk {
  readonly store: StoreApi<HowFarState>;
  readonly #inHand: Sandbox;
  readonly #runner: SweepService;
  readonly #newId: () => string;
  readonly #kept = new Newest<FoundSweep>(MOST_KEPT_SWEEPS);
  readonly #slot = new JobSlot<SweptOrNot, Progress>((work) => this.#set({ work, ...resultOf(work) }));

  constructor(inHand: Sandbox, runner: SweepService, newId: () => string) {
    this.#inHand = inHand;
    this.#runner = runner;
    this.#newId = newId;
    const subject = { sandbox: inHand };
    this.store = createStore<HowFarState>(() => ({
      subject,
      asked: askedFirst(subject),
      preset: undefined,
      work: { kind: "idle" },
      found: undefined,
      nothing: undefined,
      at: undefined,
    }));
  }

  /** Another rig to ask about; a preset puts its question. */
  about(subject: Subject = { sandbox: this.#inHand }, preset?: Preset): void {
    this.#slot.rest("idle");
    const { subject: before } = this.store.getState();
    if (before.sandbox !== subject.sandbox) this.#set({ asked: askedFirst(subject), found: undefined });
    this.#set({ subject, preset: undefined, at: undefined, nothing: undefined });
    if (preset) this.choose(preset);
    this.#recall();
  }

  choose(preset: Preset): void {
    const name = preset === "loosest" ? "backup.slack" : "connections";
    const number = numbersOf(this.store.getState().subject.sandbox.store.getState()).find((one) => one.name === name);
    if (!number) return;
    const { effort } = this.store.getState().asked;
    const { from, to } = number;
    this.ask({ ranges: [{ name, from, to }], what: { kind: "margin" }, points: "", limit: "", effort });
    this.#set({ preset });
  }

  ask(part: Partial<HowFarAsked>): void {
    const { asked, preset } = this.store.getState();
    // Another number, or another limit, is another question.
    const another = part.ranges !== undefined || part.what !== undefined || part.limit !== undefined;
    this.#set({ asked: { ...asked, ...part }, preset: another ? undefined : preset, nothing: undefined });
    this.#recall();
  }

  /** Makes the sweep; true when there is a curve at its end. What was asked before is stopped. */
  async start(): Promise<boolean> {
    this.stop();
    const { subject } = this.store.getState();
    const reading = this.reading();
    if (!reading.ok) return false;
    const { assessment, document } = subject.sandbox.store.getState();
    const key = keyOf(reading.question);
    const known = this.#kept.get(key);
    if (known) {
      this.#slot.rest("idle");
      this.#set({ found: known, nothing: undefined, at: undefined });
      return true;
    }
    const id = this.#newId();
    const of = { key, document: document.goodDocument, assessed: assessment.assessed, of: assessment.key };
    this.#set({ nothing: undefined, at: undefined });
    const made = await this.#slot.run({
      begun: { done: 0 },
      run: (tell, goesOn) => this.#sweep({ id, of, question: reading.question, tell, goesOn }),
      cancel: () => void this.#runner.cancel(id),
    });
    return made?.kind === "swept";
  }

  async #sweep({ id, of, question, tell, goesOn }: Asking): Promise<TaskAnswer<SweptOrNot>> {
    const { points, options } = question;
    const rigs = await rigsOf(points, goesOn);
    if (!goesOn()) return STOPPED;
    const answer = await this.#runner.sweep({ id, knobs: points.knobs, ...rigs, options }, tell);
    if (!answer.ok) return answer;
    const { value } = answer;
    if (value.kind !== "swept")
      return { ok: true, value: { kind: "not", nothing: { answer: value, what: options.what } } };
    const found: FoundSweep = { ...of, swept: value.swept, named: this.#named(of, points.knobs) };
    if (goesOn()) this.#kept.put(found.key, found);
    return { ok: true, value: { kind: "swept", found } };
  }

  /** Connections are counted before tapes: the rig with the most connections has a name for every one. */
  #named({ document, assessed }: Pick<FoundSweep, "document" | "assessed">, knobs: readonly Knob[]): Rig {
    if (!knobs.some(isApart)) return assessed.rig;
    const read = readRig(
      documentAt(
        document,
        knobs,
        knobs.map(({ to }) => to),
      ),
    );
    return read.ok ? read.rig : assessed.rig;
  }

  stop(): void {
    this.#slot.stop();
  }

  look(at: readonly number[] | undefined): void {
    this.#set({ at });
  }

  /** The question as it stands, read against the rig that it is asked of. */
  reading(): HowFarReading {
    const { subject, asked } = this.store.getState();
    return readingOf(asked, subject.sandbox.store.getState());
  }

  /** The document with a point's values in it; undefined where it is no rig. */
  documentAt(values: readonly number[]): WrittenRig | undefined {
    const { found } = this.store.getState();
    if (!found) return undefined;
    const document = documentAt(found.document, found.swept.knobs, values);
    return isGroup(document) && readRig(document).ok ? document : undefined;
  }

  /** Whether what was found answers the question as it stands. */
  isStale(): boolean {
    const { found } = this.store.getState();
    const reading = this.reading();
    return found !== undefined && (!reading.ok || keyOf(reading.question) !== found.key);
  }

  /** Whether the values of the sweep can be opened. If the rig was changed since, opening a value would bring the old rig back. */
  canOpen(): boolean {
    const { found, subject } = this.store.getState();
    return found?.document === subject.sandbox.store.getState().document.goodDocument;
  }

  /** The kept sweeps of this state, the oldest first. */
  found({ document, assessment }: State): readonly FoundSweep[] {
    const { key } = assessment;
    return this.#kept.values().filter((one) => one.document === document.goodDocument && one.of === key);
  }

  #recall(): void {
    const reading = this.reading();
    const known = reading.ok ? this.#kept.get(keyOf(reading.question)) : undefined;
    if (known) this.#set({ found: known, at: undefined });
  }

  #set(part: Partial<HowFarState>): void {
    this.store.setState(part);
  }
}

interface Asking {
  readonly id: string;
  readonly of: Pick<FoundSweep, "key" | "document" | "assessed" | "of">;
  readonly question: HowFarQuestion;
  readonly tell: (progress: Progress) => void;
  readonly goesOn: () => boolean;
}

/** What a sweep came to stands until the next one has come to something. */
function resultOf(work: HowFarState["work"]): Partial<HowFarState> {
  if (work.kind !== "done") return {};
  const { value } = work;
  return value.kind === "swept" ? { found: value.found } : { nothing: value.nothing, found: undefined };
}

/** After every rig the event loop gets a turn, so that the page can draw and a stop is noticed. */
async function rigsOf(question: PointsQuestion, goesOn: () => boolean): Promise<Pick<SweepRequest, "rigs" | "bad">> {
  const rigs: SweptRig[] = [];
  const bad: BadPoint[] = [];
  for (const one of sweptRigs(question)) {
    if ("issues" in one) bad.push(one);
    else rigs.push(one);
    await new Promise((resolve) => setTimeout(resolve));
    if (!goesOn()) break;
  }
  return { rigs, bad };
}

const keyOf = (question: HowFarQuestion): string => inputHash({ version: VERSION, question });

/** What a question about a sandbox's rig is read against: its last good document, with all that counts besides. */
function contextOf({ document, assessment }: State) {
  const known = assessment.leftOut ? {} : evidenceFor(document.rig, assessment.known);
  return { document: document.goodDocument, rig: document.rig, known };
}

type State = Pick<SandboxState, "document" | "assessment">;

export const readingOf = (asked: HowFarAsked, state: State) => readHowFar(asked, contextOf(state));

export function numbersOf(state: State) {
  const { document, known } = contextOf(state);
  return sweepNumbers(document, "on" in known && known.on !== undefined);
}

const askedFirst = (subject: Subject): HowFarAsked => firstAsked(numbersOf(subject.sandbox.store.getState()));
