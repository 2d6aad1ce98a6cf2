/** The engine's front door: whole runs and statics of a checked problem, with trouble returned as an outcome. */
import { SIGNAL_RATE } from "../constants.ts";
import { buildModel, type ModelOptions } from "../line/model.ts";
import type { Problem } from "../problem.ts";
import { limitIssues } from "../reading/limits.ts";
import { AUDIT_LIMIT } from "../record/energyLedger.ts";
import { peakOf } from "../record/recorder.ts";
import { type Recording, SIGNALS, type SignalName, type SimulationResult, type Standing } from "../record/recording.ts";
import { legsOf } from "../rigging/legs.ts";
import { restOf } from "../statics/rest.ts";
import { contactStiffness, NoEquilibrium, settled, standingOf } from "../statics/start.ts";
import { CHANNEL_COUNT, Simulation, type SimulationOptions } from "./simulation.ts";

/** Step of the second try at a run whose numbers went wrong, as a share of the first one's [-]. */
const RETRY_STEP_SHARE = 0.5;

/** Runs a checked problem to its end; once more with half the step when its numbers went wrong, unless the step was asked for. */
export function simulate(problem: Problem, options: SimulationOptions = {}): SimulationResult {
  const first = runOnce(problem, options);
  if (first.ok || options.stepShare !== undefined || (first.reason !== "audit" && first.reason !== "diverged"))
    return first;
  return runOnce(problem, { ...options, stepShare: RETRY_STEP_SHARE });
}

function runOnce(problem: Problem, options: SimulationOptions): SimulationResult {
  const started = startRun(problem, options);
  if (!started.ok) return started;
  started.run.advance(Number.POSITIVE_INFINITY);
  return resultOf(started.run);
}

/** Builds a run, or says why there is no rest to start from, or why it would be stiffer or longer than what is run here. */
export function startRun(
  problem: Problem,
  options: SimulationOptions = {},
): { readonly ok: true; readonly run: Simulation } | Extract<SimulationResult, { ok: false }> {
  const [issue] = limitIssues(problem, options);
  if (issue)
    return { ok: false, reason: "limits", message: `${issue.path}: ${issue.got}; expected: ${issue.expected}` };
  try {
    return { ok: true, run: new Simulation(problem, options) };
  } catch (error) {
    if (error instanceof NoEquilibrium) return { ok: false, reason: "equilibrium", message: error.message };
    throw error;
  }
}

/** What a finished run has to say; an error when it diverged or its energy does not balance. */
export function resultOf(run: Simulation): SimulationResult {
  if (run.status === "running") throw new Error("the run is not finished");
  if (run.status === "diverged") return { ok: false, reason: "diverged", message: run.trouble };
  const { imbalance, created, moved } = run.ledger;
  const worst = Math.max(imbalance, created);
  if (!(worst <= AUDIT_LIMIT * moved)) {
    const what = imbalance >= created ? "energy does not balance" : "a loss gave energy back";
    const share = ((100 * worst) / moved).toPrecision(2);
    return {
      ok: false,
      reason: "audit",
      message: `${what}: ${worst.toPrecision(3)} J, ${share} % of the energy moved`,
    };
  }
  return { ok: true, recording: recordingOf(run) };
}

function recordingOf(run: Simulation): Recording {
  const { firstModel: model, recorder, problem, events } = run;
  const signals = Object.fromEntries(
    SIGNALS.map((name, k) => [name, recorder.channels[k]!.subarray(0, recorder.samples)]),
  );
  const peaks = Object.fromEntries(SIGNALS.map((name) => [name, peakOf(signals[name]!)]));
  const lines = model.backup ? [model.main, model.backup] : [model.main];
  const shown = (run.options.shapes ?? true) ? lines : [];
  const [main, backup] = recorder.elementPeaks();
  const none = { at: new Float32Array(0), peak: new Float32Array(0) };
  const firstBreak = events.find(({ kind }) => kind === "break");
  const size = model.main.naturalLength / model.main.elements;
  return {
    problem,
    accuracy: run.options.accuracy ?? "standard",
    mesh: {
      elements: lines.reduce((sum, { elements }) => sum + elements, 0),
      size,
      step: model.step,
      steps: run.steps,
    },
    standing: run.rest.standing,
    duration: Math.min(run.time, problem.duration),
    rate: SIGNAL_RATE,
    signals: signals as Record<SignalName, Float32Array>,
    peaks: peaks as Recording["peaks"],
    walkerHeight: recorder.channels[SIGNALS.length]!.subarray(0, recorder.samples),
    walker: {
      start: run.startHeight,
      lowest: run.lowest,
      drop: run.startHeight - run.lowest,
      lowestTime: run.lowestTime,
    },
    connections: run.joints.states.map(({ joint, peak, peakTime, whole }, k) => ({
      ...(joint.kind === "connection"
        ? { force: recorder.channels[CHANNEL_COUNT + k]!.subarray(0, recorder.samples) }
        : {}),
      at: joint.at,
      tape: joint.kind === "tape",
      peak,
      time: peakTime,
      parted: !whole,
    })),
    legs: run.legAnchors.flatMap((anchor) =>
      anchor.legs.map((_, leg) => ({ anchor: anchor.end, leg, peak: anchor.peaks[leg]!, parted: !anchor.whole[leg] })),
    ),
    elementPeaks: { main: main!, backup: backup ?? none },
    events: [...events].sort((a, b) => a.time - b.time),
    ...(firstBreak ? { firstBreak } : {}),
    energy: run.ledger.result(),
    frames: {
      rate: recorder.frameRate,
      count: recorder.frames,
      mainNodes: shown[0]?.nodes ?? 0,
      backupNodes: shown[1]?.nodes ?? 0,
      positions: recorder.positions,
      tensions: recorder.tensions,
      fractions: Float32Array.from(shown.flatMap(({ fractions }) => [...fractions])),
      ringAt: recorder.ringAt,
    },
  };
}

/** Sag and tension of the bare rig and with the walker's weight on the line. */
export function solveStanding(
  problem: Problem,
  options: ModelOptions = {},
):
  | {
      readonly ok: true;
      readonly unloaded: { readonly tension: number; readonly sag: number };
      readonly standing: Standing;
    }
  | Extract<SimulationResult, { ok: false }> {
  const model = buildModel(problem, options);
  const legs = legsOf(problem);
  const contact = contactStiffness(model);
  try {
    const bare = settled(restOf(model, "bare", contact, legs));
    const loaded = settled(restOf(model, "onNode", contact, legs));
    const { tension, sag } = standingOf(model, bare);
    return { ok: true, unloaded: { tension, sag }, standing: standingOf(model, loaded) };
  } catch (error) {
    if (error instanceof NoEquilibrium) return { ok: false, reason: "equilibrium", message: error.message };
    throw error;
  }
}
