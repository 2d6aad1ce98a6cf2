import { type Outcome, type SiteCard, siteCard } from "@secondline/scenarios";
import { type CardText, cardWords } from "@secondline/words/card";
import { sayCard } from "@secondline/words/page/card";
import { cardNotice, todayIso } from "@secondline/workbench";
import { useEffect } from "react";
import { Button } from "../design/Button.tsx";
import { Lines } from "../design/Lines.tsx";
import { Meter } from "../design/Meter.tsx";
import { VerdictMark, verdictColour } from "../design/VerdictMark.tsx";
import { useActions, useContextOrThrow, useSandbox } from "../state/useSandbox.ts";
import { CautionFoot } from "../verdict/CautionFoot.tsx";
import { StudyState } from "../verdict/StudyState.tsx";
import { WearContext } from "../wearInHand/useWear.ts";
import { tellKnown, wearStoreOf } from "../wearInHand/work.ts";
import { quantity, words } from "../words.ts";
import styles from "./card.module.css";
import { useCard } from "./useCard.ts";
import { type Heavier, useHeavier } from "./useHeavier.ts";

/** What those must know who clip in, as it is printed: who may walk, until when, and what makes the card lapse. */
export function CardView() {
  const sandbox = useContextOrThrow();
  useEffect(() => void tellKnown(sandbox), [sandbox]);
  return (
    <WearContext.Provider value={wearStoreOf(sandbox)}>
      <div className={styles.view}>
        <main className={styles.scroll} aria-label={sayCard("cardView.siteCard")}>
          <div className={styles.page}>
            <Body />
          </div>
        </main>
        <CautionFoot cautions={words.generalCautions()} />
      </div>
    </WearContext.Provider>
  );
}

function Body() {
  const state = useCard();
  const heavier = useHeavier();
  const { look } = useActions();
  if (state.kind === "ready") {
    const card = siteCard({ ...state.question, made: todayIso(), ...heavier.found });
    return <Card {...{ card, heavier }} outcome={state.question.outcome} />;
  }
  const { title, says, role, way } = cardNotice(state);
  return (
    <>
      <h2 className={styles.title}>{title}</h2>
      <p className={styles.says} role={role}>
        {says}
      </p>
      {state.kind === "searching" && <StudyState />}
      <div className={styles.buttons}>
        <Button tone="quiet" label={way.label} onClick={() => look({ view: way.view })} />
      </div>
    </>
  );
}

function Card({ card, outcome, heavier }: { card: SiteCard; outcome: Outcome; heavier: Heavier }) {
  const assessed = useSandbox((state) => state.assessment.assessed);
  const { look, tell } = useActions();
  const date = todayIso();
  const text = cardWords.card({ rig: assessed.rig, outcome, card, made: date });
  async function made(how: "saveCard" | "printCard"): Promise<void> {
    const saving = await import("./saveCard.ts").catch(() => undefined);
    if (saving) saving[how]({ assessed, outcome, card, date });
    else tell({ tone: "fault", text: sayCard("cardView.partMissing") });
  }
  return (
    <>
      <h2 className={styles.title}>{text.title}</h2>
      <Status text={text} date={date} />
      <div className={styles.buttons}>
        <Button tone="filled" icon="save" label={sayCard("cardView.saveCard")} onClick={() => void made("saveCard")} />
        <Button label={sayCard("cardView.print")} onClick={() => void made("printCard")} />
        <Button tone="quiet" label={sayCard("cardView.wearRecord")} onClick={() => look({ view: "wear" })} />
      </div>
      {card.allows && !card.allows.walker.looked && <Look heavier={heavier} />}
      {text.must.items.length > 0 && <List {...text.must} />}
      <dl className={styles.rows}>
        {text.rows.map(({ kind, name, value, note }) => (
          <div key={kind} className={styles[WIDE.has(kind) ? "wide" : "row"]}>
            <dt>{name}</dt>
            <dd>
              <span className={styles.value}>{value}</span>
              {note && <span className={styles.note}>{note}</span>}
            </dd>
          </div>
        ))}
      </dl>
      <List {...text.lapse} />
      <List {...text.cautions} />
      <p className={styles.foot}>
        {text.foot.state} {text.foot.hashName}: <code>{text.foot.hash}</code>
      </p>
    </>
  );
}

/** A sweep of the walker's mass, then whole searches: it takes as long as two or three verdicts. */
function Look({ heavier: { busy, failed, start, stop } }: { heavier: Heavier }) {
  if (!busy) {
    return (
      <div className={styles.buttons}>
        <Button label={cardWords.say("heavier.look")} title={cardWords.say("heavier.hint")} onClick={start} />
        {failed && <p role="alert">{cardWords.say("heavier.failed")}</p>}
      </div>
    );
  }
  return (
    <div className={styles.busy}>
      <Meter done={busy.done} doing={cardWords.say(busy.step === 1 ? "heavier.sweep" : "heavier.search")} />
      <Button icon="stop" label={cardWords.say("heavier.stop")} onClick={stop} />
    </div>
  );
}

/** Rows of words rather than of a number. */
const WIDE: ReadonlySet<CardText["rows"][number]["kind"]> = new Set(["leash", "singles", "unfollowed"]);

const MARK = { given: "holds", none: "fails", lapsed: "thin" } as const;

/** Once its last day is over by the clock of the device, a card has lapsed here as it has on paper. */
function Status({ text, date }: { text: CardText; date: string }) {
  const late = text.late && date > text.late.day ? text.late : undefined;
  const mark = MARK[late ? "lapsed" : text.permission];
  return (
    <section className={styles.status} data-permission={late ? "lapsed" : text.permission}>
      <p className={styles.word} style={{ color: verdictColour(mark) }}>
        <VerdictMark verdict={mark} size={30} /> {late?.word ?? text.word}
      </p>
      <p className={styles.says}>{quantity.unbroken(late?.says ?? text.says)}</p>
    </section>
  );
}

function List({ head, items }: CardText["lapse"]) {
  return (
    <section className={styles.list}>
      <h3>{head}</h3>
      <Lines of={items} />
    </section>
  );
}
