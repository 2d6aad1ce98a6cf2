import type { Rig } from "@secondline/rig";
import { timeText, howFarWords as words } from "@secondline/words/howFar";
import {
  canDisconnect,
  canLoosen,
  faultsAt,
  foretoldSweep,
  type HowFarDesk,
  type HowFarPlace,
  type HowFarReading,
  LETTERS,
  limitKind,
  nothingText,
  numberOptions,
  numbersOf,
  readingOf,
  rigName,
  type SweepNumber,
  subjectOptions,
  sweepDoing,
  whatsOf,
  whatText,
  withNumber,
} from "@secondline/workbench";
import { useEffect, useMemo, useState } from "react";
import { useStore } from "zustand";
import type { Booted } from "../boot.ts";
import { Button } from "../design/Button.tsx";
import { Choice } from "../design/Choice.tsx";
import { Meter } from "../design/Meter.tsx";
import { TextField } from "../design/TextField.tsx";
import { layoutsOf, useLayoutList } from "../layouts/useLayouts.ts";
import { useActions } from "../state/useSandbox.ts";
import { mostJobs } from "../worker/jobs.ts";
import styles from "./howFar.module.css";

const { say } = words;
const NO_NUMBER = "";

/** What is asked: whose number, over which range, what is looked at, how closely; and how long it will take. */
export function HowFarForm({ desk, booted }: { desk: HowFarDesk; booted: Booted }) {
  const asked = useStore(desk.store, (state) => state.asked);
  const subject = useStore(desk.store, (state) => state.subject);
  const document = useStore(subject.sandbox.store, (state) => state.document);
  const assessment = useStore(subject.sandbox.store, (state) => state.assessment);
  const { rig } = document;
  const numbers = useMemo(() => numbersOf({ document, assessment }), [document, assessment]);
  const reading = useMemo(() => readingOf(asked, { document, assessment }), [asked, document, assessment]);
  const faults = (place: HowFarPlace) => faultsAt(reading, place);
  const named = numberOptions(rig, numbers);
  const [first, second] = asked.ranges;
  const change = (place: 0 | 1, part: Partial<{ from: string; to: string }>) =>
    desk.ask({ ranges: asked.ranges.map((one, i) => (i === place ? { ...one, ...part } : one)) });
  const choose = (place: 0 | 1, name: string) => {
    const number = numbers.find((one) => one.name === name);
    desk.ask({ ranges: withNumber(asked.ranges, place, number) });
  };
  const range = (place: 0 | 1) => (
    <Range
      range={asked.ranges[place]!}
      number={numbers.find(({ name }) => name === asked.ranges[place]!.name)}
      messages={faults(place === 0 ? "first" : "second")}
      onChange={(part) => change(place, part)}
    />
  );
  return (
    <section className={styles.form} aria-label={say("title")}>
      <h2 className={styles.title}>{say("title")}</h2>
      <p className={styles.intro}>{say("intro")}</p>
      <Of {...{ desk, booted }} />
      <Presets {...{ desk }} rig={rig} />
      <div className={styles.fields}>
        <Choice
          label={say("field.first")}
          value={first?.name ?? NO_NUMBER}
          options={named}
          onChange={(name) => choose(0, name)}
        />
        {first && range(0)}
        <Choice
          label={say("field.second")}
          value={second?.name ?? NO_NUMBER}
          options={[
            { value: NO_NUMBER, label: say("field.none") },
            ...named.filter(({ value }) => value !== first?.name),
          ]}
          onChange={(name) => choose(1, name)}
        />
        {second && range(1)}
        <Choice<string>
          label={say("field.what")}
          value={whatText(asked.what)}
          options={whatsOf(rig).map((what) => ({ value: whatText(what), label: words.what(rig, what) }))}
          onChange={(text) => desk.ask({ what: whatsOf(rig).find((one) => whatText(one) === text)!, limit: "" })}
        />
        <TextField
          label={say("field.limit")}
          value={asked.limit}
          hint={say("field.limitHint", { example: say(`limit.${limitKind(asked.what)}`) })}
          messages={faults("limit")}
          onChange={(limit) => desk.ask({ limit })}
        />
        <Choice
          label={say("field.effort")}
          value={asked.effort}
          options={(["quick", "full"] as const).map((value) => ({ value, label: say(`effort.${value}`) }))}
          onChange={(effort) => desk.ask({ effort })}
        />
        <p className={styles.hint}>{say(`effort.${asked.effort}Hint`)}</p>
        <TextField
          label={say(second ? "field.pointsOfTwo" : "field.points")}
          value={asked.points}
          placeholder={reading.ok ? reading.question.points.counts.join(" × ") : ""}
          messages={faults("points")}
          onChange={(points) => desk.ask({ points })}
        />
      </div>
      {document.issues.length > 0 && <p className={styles.wrong}>{words.fault({ kind: "issues" })}</p>}
      <Start {...{ desk, reading }} rig={rig} />
    </section>
  );
}

function Range({
  range,
  number,
  messages,
  onChange,
}: {
  range: { readonly from: string; readonly to: string };
  number: SweepNumber | undefined;
  messages: readonly string[];
  onChange: (part: Partial<{ from: string; to: string }>) => void;
}) {
  return (
    <div className={styles.range}>
      <TextField
        label={say("field.from")}
        value={range.from}
        onChange={(from) => onChange({ from })}
        messages={messages}
      />
      <TextField
        label={say("field.to")}
        value={range.to}
        onChange={(to) => onChange({ to })}
        {...(number?.now === undefined ? {} : { hint: say("field.now", { value: number.now }) })}
      />
    </div>
  );
}

/** Whose number it is, where there are layouts besides the open rig. */
function Of({ desk, booted }: { desk: HowFarDesk; booted: Booted }) {
  const list = useLayoutList(layoutsOf(booted));
  const subject = useStore(desk.store, (state) => state.subject);
  const options = subjectOptions(
    list.map(({ sandbox }) => rigName(sandbox.store.getState().document.history.present.rig)),
  );
  const chosen = Math.max(
    0,
    list.findIndex(({ sandbox }) => sandbox === subject.sandbox),
  );
  if (list.length === 1) return <p className={styles.of}>{options[0]!.label}</p>;
  return (
    <Choice
      compact
      label={say("of.inHand", { name: "" })}
      value={String(chosen)}
      options={options}
      onChange={(text) => {
        const { sandbox } = list[Number(text)]!;
        desk.about(text === "0" ? undefined : { sandbox, letter: LETTERS[Number(text)]! });
      }}
    />
  );
}

function Presets({ desk, rig }: { desk: HowFarDesk; rig: Rig }) {
  const preset = useStore(desk.store, (state) => state.preset);
  if (!canLoosen(rig)) return null;
  return (
    <div className={styles.presets}>
      <Button label={say("preset.backup")} pressed={preset === "loosest"} onClick={() => desk.choose("loosest")} />
      {canDisconnect(rig) && (
        <Button label={say("preset.connections")} pressed={preset === "fewest"} onClick={() => desk.choose("fewest")} />
      )}
    </div>
  );
}

/** One button starts and stops, so that whoever pressed it stays on it; the time is told before. */
function Start({ desk, reading, rig }: { desk: HowFarDesk; reading: HowFarReading; rig: Rig }) {
  const work = useStore(desk.store, (state) => state.work);
  const nothing = useStore(desk.store, (state) => state.nothing);
  const found = useStore(desk.store, (state) => state.found);
  const { announce } = useActions();
  const busy = work.kind === "busy";
  const foretold = useForetold(desk, reading);
  const start = async () => {
    if (await desk.start()) announce(say("said.ready"));
  };
  return (
    <div className={styles.start}>
      <div className={styles.startRow}>
        <Button
          tone="filled"
          icon={busy ? "stop" : "play"}
          label={say(busy ? "stop" : found && !desk.isStale() ? "again" : "start")}
          disabled={!busy && !reading.ok}
          onClick={() => (busy ? desk.stop() : void start())}
        />
        {!busy && reading.ok && foretold && (
          <p className={styles.note}>
            {say("time", { runs: foretold.runs, time: timeText(foretold.seconds), jobs: mostJobs() })}
          </p>
        )}
      </div>
      {busy && <Meter done={work.progress.done} doing={sweepDoing(rig, work.progress)} />}
      {work.kind === "stopped" && <p className={styles.note}>{say("stopped")}</p>}
      {work.kind === "failed" && (
        <p className={styles.wrong} role="alert">
          {say("failed", { message: work.message })}
        </p>
      )}
      {nothing !== undefined && (
        <p className={styles.wrong} role="alert">
          {nothingText(nothing)}
        </p>
      )}
    </div>
  );
}

/** Typing comes first: the time is worked out a moment after the last change [ms]. */
const SETTLE_MS = 300;

function useForetold(desk: HowFarDesk, reading: HowFarReading) {
  const [foretold, setForetold] = useState<ReturnType<typeof foretoldSweep>>();
  useEffect(() => {
    if (!reading.ok) return undefined;
    const timer = setTimeout(() => {
      const { assessed } = desk.store.getState().subject.sandbox.store.getState().assessment;
      setForetold(foretoldSweep(reading.question, assessed, mostJobs()));
    }, SETTLE_MS);
    return () => clearTimeout(timer);
  }, [desk, reading]);
  return foretold;
}
