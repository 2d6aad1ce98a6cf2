import { needFacts, type WebbingState } from "@secondline/strength";
import { listed } from "@secondline/words";
import { dayText } from "@secondline/words/dates";
import { tellNote } from "@secondline/words/notes";
import { sayWear } from "@secondline/words/page/wear";
import { isNamed, type Stretch } from "@secondline/workbench";
import { capitalPartName, flagWords, rigsIn, withSurroundings } from "@secondline/workbench/record";
import { useMemo } from "react";
import { DEMO_RIGS } from "../demo/demoRigs.ts";
import { Button } from "../design/Button.tsx";
import { Disclosure } from "../design/Disclosure.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { useFits, useWear, useWearActions, useWearState } from "../wearInHand/useWear.ts";
import { quantity, words } from "../words.ts";
import { Flags } from "./Flags.tsx";
import styles from "./wear.module.css";

/** Old marks that lie in a loaded span today, in words. */
export function Places() {
  const { webbings, parts, flags } = useWearState();
  const on = useWear((state) => state.on);
  const { look } = useWearActions();
  function show({ id, to }: WebbingState, place: Stretch): void {
    const owner = { list: "webbings", index: webbings.findIndex((webbing) => webbing.id === id) } as const;
    look({ owner, entry: undefined, along: withSurroundings(place, to) });
    document.querySelector("[data-along]")?.scrollIntoView({ block: "nearest" });
  }
  const places = useMemo(
    () =>
      webbings.map((webbing) => ({ webbing, told: flagWords(webbing, flags) })).filter(({ told }) => told.length > 0),
    [webbings, flags],
  );
  const open = useMemo(
    () => [...webbings, ...parts.map((part) => ({ ...part, name: capitalPartName(part.part) }))].flatMap(needFacts),
    [webbings, parts],
  );
  return (
    <section className={styles.section} aria-label={sayWear("places.title")}>
      <h3 className={styles.h3}>{sayWear("places.lookAtThese")}</h3>
      {open.length > 0 && (
        <Flags
          label={sayWear("places.openInspections")}
          of={open.map((need) => ({ key: JSON.stringify(need), said: quantity.unbroken(tellNote(need)) }))}
        />
      )}
      {places.length === 0 && <p className={styles.serif}>{sayWear("places.noneInSpan", { day: dayText(on) })}</p>}
      {places.map(({ webbing, told }) => (
        <div key={webbing.id}>
          <h4 className={styles.h4}>{webbing.name}</h4>
          <Flags
            of={told.map(({ key, headline, detail, place }) => ({
              key,
              said: (
                <>
                  {quantity.unbroken(headline)} <span className={styles.soft}>{quantity.unbroken(detail)}</span>{" "}
                  <button type="button" className={styles.show} onClick={() => show(webbing, place)}>
                    {sayWear("places.show")}
                  </button>
                </>
              ),
            }))}
          />
        </div>
      ))}
    </section>
  );
}

/** What of this record the verdict of the open rig takes, and the one step to leaving it out. */
export function InTheVerdict() {
  const record = useWear((state) => state.good.record);
  const faulty = useWear((state) => state.issues.length > 0);
  const on = useWear((state) => state.on);
  const fits = useFits();
  const rig = useSandbox((state) => state.document.rig);
  const { assessed, choice, leftOut } = useSandbox((state) => state.assessment);
  const { leaveOut, replaceRig } = useActions();
  const names = rigsIn(record);
  const demo = DEMO_RIGS.find(({ document: { id, name } }) =>
    names.some((named) => (named === id || named === name) && !isNamed(rig, named)),
  );
  return (
    <section className={styles.section} aria-label={sayWear("places.verdict")}>
      <h3 className={styles.h3}>{sayWear("places.verdict")}</h3>
      {fits ? (
        <p className={styles.note}>
          {leftOut && choice
            ? sayWear("places.leftOutOfVerdict", { name: rig.name })
            : words.taken(assessed.rig, assessed)}{" "}
          {sayWear("places.positionsCaution")}
        </p>
      ) : (
        <p className={styles.note}>
          {sayWear("places.recordOfAnotherRig", { name: rig.name, day: dayText(on) })}{" "}
          {names.length > 0 ? listed(names, "semicolon") : sayWear("places.noRigYet")}.
        </p>
      )}
      {faulty && fits && !leftOut && <p className={styles.wrong}>{sayWear("places.verdictTakesEarlierRecord")}</p>}
      {assessed.notes.length > 0 && (
        <Disclosure level={4} title={sayWear("places.notesCount", { count: assessed.notes.length })}>
          <Flags of={assessed.notes.map((note) => ({ key: JSON.stringify(note), said: tellNote(note) }))} />
        </Disclosure>
      )}
      <div className={styles.buttons}>
        {choice && (
          <Button
            label={leftOut ? sayWear("places.useInVerdict") : sayWear("places.leaveOut")}
            onClick={() => leaveOut(!leftOut)}
          />
        )}
        {!fits && demo && (
          <Button
            label={sayWear("places.open", { name: String(demo.document.name).replace("Example crag, ", "") })}
            onClick={() => replaceRig(demo.document, sayWear("places.opened", { title: demo.title }))}
          />
        )}
      </div>
    </section>
  );
}
