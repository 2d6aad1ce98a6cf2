/**
 * Deals tasks to workers, one to each at a time. A worker that dies costs the one task that it had, which another worker takes
 * up. A cancelled task is answered at once; its worker stops within a slice, or is replaced.
 */
import type { Assessed } from "@secondline/scenarios";
import { CANCELLED, failed, failureOf, messageOf } from "../failure.ts";
import type { Progress, ServiceAnswer } from "../service.ts";
import { knownOf } from "../tasks/known.ts";
import { nextTask } from "../tasks/nextTask.ts";
import { keepFew, type Task, type TaskKind, type Tasks, type TaskValue, type TaskValues } from "../tasks/task.ts";
import { ASSESSMENTS_KEPT, type FromWorker, type PoolWorker, type SpawnWorker } from "./messages.ts";

/** Ranks of waiting tasks: an earlier rank goes before all later ones. */
const TASK_RANKS = ["eye", "study", "background"] as const;
export type Rank = (typeof TASK_RANKS)[number];

/** State of a request that its owner may still change, for all of its tasks; `look()` tells the pool. */
export interface Ticket {
  cancelled: boolean;
  /** While true, no further task of the request is begun. */
  paused: boolean;
}

export interface TaskCall {
  readonly rank: Rank;
  readonly ticket: Ticket;
  readonly onProgress?: (progress: Progress) => void;
  /** Gets the time for which a worker worked on the task [ms]. */
  readonly onTook?: (ms: number) => void;
}

/** Number of times that a task is begun before it is given up as one that kills its workers. */
const MOST_TRIES = 3;
/** A worker that has not stopped this long after a cancel is replaced [ms]. */
const CANCEL_PATIENCE_MS = 200;

interface Job {
  readonly id: number;
  readonly assessed: Assessed;
  readonly task: Task;
  readonly call: TaskCall;
  /** Answers the waiting caller; later calls do nothing. */
  readonly settle: (answer: ServiceAnswer<TaskValue>) => void;
  tries: number;
}

interface Member {
  readonly worker: PoolWorker;
  /** Hashes of the assessments that the worker has. */
  readonly has: Map<string, true>;
  /** The task that the worker works on, cancelled or not; absent: it is idle. */
  job: Job | undefined;
}

export interface WorkerPoolOptions {
  readonly spawn: SpawnWorker;
  /** Largest number of workers. */
  readonly jobs: number;
}

export class WorkerPool {
  readonly #spawn: SpawnWorker;
  #jobs: number;
  #lastId = 0;
  readonly #members = new Set<Member>();
  readonly #waiting: Readonly<Record<Rank, Job[]>> = { eye: [], study: [], background: [] };
  readonly #open = new Map<number, Job>();

  constructor({ spawn, jobs }: WorkerPoolOptions) {
    this.#spawn = spawn;
    this.#jobs = atLeastOne(jobs);
  }

  /** Never rejects. Tasks of one rank are begun in the order in which they were asked for. */
  work<K extends TaskKind>(assessed: Assessed, task: Tasks[K], call: TaskCall): Promise<ServiceAnswer<TaskValues[K]>> {
    return new Promise((resolve) => {
      if (call.ticket.cancelled) return resolve(CANCELLED);
      const id = ++this.#lastId;
      const job: Job = {
        id,
        assessed,
        task,
        call,
        tries: 0,
        settle: (answer) => {
          if (this.#open.delete(id)) resolve(answer as ServiceAnswer<TaskValues[K]>);
        },
      };
      this.#open.set(id, job);
      this.#waiting[call.rank].push(job);
      this.#deal();
    });
  }

  /** Sets how many tasks are worked on at a time. */
  setJobs(jobs: number): void {
    this.#jobs = atLeastOne(jobs);
    this.#trim();
    this.#deal();
  }

  /** How many workers there are, how many of them work, and how many tasks are not answered yet. */
  get state(): { readonly workers: number; readonly busy: number; readonly open: number } {
    const busy = [...this.#members].filter(({ job }) => job).length;
    return { workers: this.#members.size, busy, open: this.#open.size };
  }

  /** Looks at the tickets again: one was cancelled, paused or taken up again. */
  look(): void {
    for (const job of [...this.#open.values()]) if (job.call.ticket.cancelled) this.#cancel(job);
    this.#deal();
  }

  /** Ends the workers; pending tasks answer `cancelled`. A later task makes new ones. */
  dispose(): void {
    for (const member of this.#members) member.worker.terminate();
    this.#members.clear();
    for (const rank of TASK_RANKS) this.#waiting[rank].length = 0;
    for (const job of this.#open.values()) job.settle(CANCELLED);
  }

  /** Hands waiting jobs to idle workers, and makes new workers as long as there are fewer than allowed. */
  #deal(): void {
    for (let job = this.#first(); job; job = this.#first()) {
      const member = this.#idle(job.assessed.hash) ?? this.#recruit();
      if (!member) return;
      this.#takeOut(job);
      this.#begin(member, job);
    }
  }

  #first(): Job | undefined {
    for (const rank of TASK_RANKS) {
      const job = this.#waiting[rank].find(({ call }) => !call.ticket.paused);
      if (job) return job;
    }
    return undefined;
  }

  #takeOut(job: Job): void {
    const waiting = this.#waiting[job.call.rank];
    const place = waiting.indexOf(job);
    if (place >= 0) waiting.splice(place, 1);
  }

  /** Prefers a worker that has the assessment already. */
  #idle(hash: string): Member | undefined {
    const idle = [...this.#members].filter(({ job }) => !job);
    return idle.find(({ has }) => has.has(hash)) ?? idle[0];
  }

  #recruit(): Member | undefined {
    if (this.#members.size >= this.#jobs) return undefined;
    try {
      const worker = this.#spawn({
        heard: (message) => this.#heard(member, message),
        lost: (detail) => this.#lost(member, detail),
      });
      const member: Member = { worker, has: new Map(), job: undefined };
      this.#members.add(member);
      return member;
    } catch (error) {
      // Fewer workers than wished for will do; without any there is no answer.
      if (this.#members.size === 0) this.#refuse(messageOf(error));
      return undefined;
    }
  }

  #refuse(message: string): void {
    for (const rank of TASK_RANKS) this.#waiting[rank].length = 0;
    for (const job of this.#open.values()) job.settle(failed("noWorker", message));
  }

  #begin(member: Member, job: Job): void {
    const { assessed, task, id } = job;
    member.job = job;
    job.tries++;
    try {
      this.#tell(member, assessed);
    } catch (error) {
      member.job = undefined;
      job.settle(failureOf(error));
      return;
    }
    member.worker.post({ kind: "task", id, hash: assessed.hash, task });
  }

  #tell(member: Member, assessed: Assessed): void {
    if (member.has.has(assessed.hash)) return;
    const known = knownOf(assessed);
    keepFew(member.has, assessed.hash, true, ASSESSMENTS_KEPT);
    member.worker.post({ kind: "assessed", hash: assessed.hash, known });
  }

  #heard(member: Member, message: FromWorker): void {
    const { job } = member;
    if (!this.#members.has(member) || job?.id !== message.id) return;
    switch (message.kind) {
      case "progress":
        // A cancelled task reports nothing any more.
        if (this.#open.has(job.id)) job.call.onProgress?.(message.progress);
        return;
      case "answer":
        member.job = undefined;
        if (this.#open.has(job.id)) job.call.onTook?.(message.took);
        job.settle(message.answer);
        this.#trim();
        this.#deal();
        return;
    }
  }

  #lost(member: Member, detail: string): void {
    if (!this.#members.has(member)) return;
    this.#drop(member);
    const { job } = member;
    if (job && this.#open.has(job.id)) {
      if (job.tries < MOST_TRIES) this.#waiting[job.call.rank].unshift(job);
      else job.settle(failed("workerLost", `The computation stopped unexpectedly${inBrackets(detail)}. Run it again.`));
    }
    this.#deal();
  }

  #cancel(job: Job): void {
    this.#takeOut(job);
    job.settle(CANCELLED);
    const member = [...this.#members].find((one) => one.job === job);
    if (!member) return;
    member.worker.post({ kind: "cancel", id: job.id });
    void this.#replaceIfStuck(member, job);
  }

  async #replaceIfStuck(member: Member, job: Job): Promise<void> {
    await new Promise((resolve) => setTimeout(resolve, CANCEL_PATIENCE_MS));
    // This thread may have been busy itself, so messages that the worker has sent in the meantime are handled first.
    await nextTask();
    if (member.job !== job || !this.#members.has(member)) return;
    this.#drop(member);
    this.#deal();
  }

  /** Lets idle workers go when there are more than allowed. */
  #trim(): void {
    for (const member of this.#members) {
      if (this.#members.size > this.#jobs && !member.job) this.#drop(member);
    }
  }

  #drop(member: Member): void {
    this.#members.delete(member);
    member.worker.terminate();
  }
}

const atLeastOne = (jobs: number): number => Math.max(1, Math.floor(jobs));
const inBrackets = (detail: string): string => (detail === "" ? "" : ` (${detail})`);
