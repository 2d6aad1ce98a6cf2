import type { Rig } from "@secondline/rig";
import { timeText, howFarWords as words } from "@secondline/words/howFar";
import {
  canDisconnect,
  canLoosen,
  foretoldSweep,
  type HowFarDesk,
  type HowFarField,
  type HowFarReading,
  howFarFields,
  LETTERS,
  nothingText,
  numbersOf,
  readingOf,
  rigName,
  subjectOptions,
  sweepDoing,
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

/** What is asked: whose number, over which range, what is looked at, how closely; and how long it will take. */
export function HowFarForm({ desk, booted }: { desk: HowFarDesk; booted: Booted }) {
  const asked = useStore(desk.store, (state) => state.asked);
  const subject = useStore(desk.store, (state) => state.subject);
  const document = useStore(subject.sandbox.store, (state) => state.document);
  const assessment = useStore(subject.sandbox.store, (state) => state.assessment);
  const { rig } = document;
  const numbers = useMemo(() => numbersOf({ document, assessment }), [document, assessment]);
  const reading = useMemo(() => readingOf(asked, { document, assessment }), [asked, document, assessment]);
  const fields = howFarFields({ asked, rig, numbers, reading });
  return (
    <section className={styles.form} aria-label={say("title")}>
      <h2 className={styles.title}>{say("title")}</h2>
      <p className={styles.intro}>{say("intro")}</p>
      <Of {...{ desk, booted }} />
      <Presets {...{ desk }} rig={rig} />
      <div className={styles.fields}>
        {fields.map((field) => (
          <Field key={field.name} field={field} desk={desk} />
        ))}
      </div>
      {document.issues.length > 0 && <p className={styles.wrong}>{words.fault({ kind: "issues" })}</p>}
      <Start {...{ desk, reading }} rig={rig} />
    </section>
  );
}

function Field({ field, desk }: { field: HowFarField; desk: HowFarDesk }) {
  switch (field.kind) {
    case "choice":
      return <Choice {...field} onChange={(value) => desk.ask(field.ask(value))} />;
    case "text":
      return <TextField {...field} type="text" onChange={(text) => desk.ask(field.ask(text))} />;
    case "hint":
      return <p className={styles.hint}>{field.text}</p>;
    case "range":
      return (
        <div className={styles.range}>
          {field.ends.map((end) => (
            <Field key={end.name} field={end} desk={desk} />
          ))}
        </div>
      );
  }
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
