import { quantity } from "@secondline/words";
import { newRigWords } from "@secondline/words/newRig";
import {
  isAsked,
  type QUESTIONS,
  type QuestionId,
  stretched,
  withDrawnGround,
  withProfile,
} from "@secondline/workbench";
import { Button } from "../design/Button.tsx";
import { Disclosure } from "../design/Disclosure.tsx";
import { Paragraphs } from "../design/Lines.tsx";
import { Tick } from "../design/Tick.tsx";
import { MeasuredLegs } from "../measure/MeasuredLegs.tsx";
import { MeasuredSite } from "../measure/MeasuredSite.tsx";
import { SideTools } from "../side/SideTools.tsx";
import type { SideInHand } from "../side/useSideDesk.ts";
import { OwnStock } from "../stocks/OwnStock.tsx";
import { AnswerField } from "./AnswerField.tsx";
import { GroundFile } from "./GroundFile.tsx";
import styles from "./newRig.module.css";
import type { NewRigInHand } from "./useNewRig.ts";

const { say } = newRigWords;

/** One question: its answers, and the way to say that the template's are right. */
export function QuestionPart({
  question,
  desk,
  hand,
}: {
  question: (typeof QUESTIONS)[number];
  desk: NewRigInHand;
  hand: SideInHand | undefined;
}) {
  const { id } = question;
  const { answers } = desk;
  const confirmed = answers.confirmed?.includes(id) ?? false;
  const shown = question.answers.filter((one) => isAsked(one, answers));
  const { profile } = answers;
  return (
    <section className={styles.question} aria-labelledby={`question-${id}`}>
      <h3 id={`question-${id}`} className={styles.title}>
        {say(`question.${id}`)}
      </h3>
      <p className={styles.help}>
        {id === "ground" && profile ? say(profileHelp(answers), { count: profile.length }) : say(`help.${id}`)}
      </p>
      <div className={styles.answers}>
        {shown.map((one) => (
          <AnswerField key={one} id={one} desk={desk} confirmed={confirmed} />
        ))}
      </div>
      {id === "ground" && <GroundByHand desk={desk} hand={hand} />}
      <More id={id} desk={desk} />
      {desk.unkept?.at === id && <p className={styles.wrong}>✕ {say("unkept.here", { reason: desk.unkept.reason })}</p>}
      {id === "age" ? (
        <Button label={say("allNew")} pressed={answers.age === "new"} onClick={() => desk.answer("age", "new")} />
      ) : (
        <Tick
          label={say("confirm")}
          hint={say("confirmOf", { question: say(`question.${id}`) })}
          checked={confirmed}
          onChange={(right) => desk.confirm(id, right)}
        />
      )}
    </section>
  );
}

/** What a question offers besides its answers: a webbing of one's own, the ground from a file. */
function More({ id, desk }: { id: QuestionId; desk: NewRigInHand }) {
  const { answers, change } = desk;
  const stocks = answers.stocks ?? [];
  if (id === "main") {
    return (
      <OwnStock
        names={stocks.map((stock) => String(stock.name ?? stock.id))}
        onKeep={(stock) => change({ ...answers, stocks: [...stocks, stock], webbing: stock.id })}
      />
    );
  }
  if (id === "site") {
    return (
      <Disclosure title={say("measured.open")} level={4}>
        <MeasuredSite onTake={(texts) => change({ ...answers, ...texts })} />
      </Disclosure>
    );
  }
  if (id === "anchors") {
    return (["legAngleA", "legAngleB"] as const)
      .filter((one) => isAsked(one, answers))
      .map((one) => (
        <Disclosure key={one} title={say("legs.open", { anchor: one.slice(-1) })} level={4}>
          <MeasuredLegs onTake={(angle) => desk.answer(one, angle)} />
        </Disclosure>
      ));
  }
  if (id !== "ground") return null;
  return (
    <>
      <GroundFile span={desk.side?.site.span} onTake={(profile) => change(withProfile(answers, profile))} />
      {answers.profile && (
        <Button tone="quiet" label={say("ground.drop")} onClick={() => change(withProfile(answers, undefined))} />
      )}
    </>
  );
}

const profileHelp = ({ drawn }: NewRigInHand["answers"]) => (drawn?.includes("ground") ? "help.drawn" : "help.profile");

/** What is wrong with a profile, the way to put right what a new span brings, and the buttons of the sketch. */
function GroundByHand({ desk, hand }: { desk: NewRigInHand; hand: SideInHand | undefined }) {
  const { answers, made, change, side, undo } = desk;
  const faults = made.faults.filter(({ place }) => place === "profile");
  const end = side?.points.at(-1)?.[0];
  const isDrawn = answers.drawn?.includes("ground");
  const endsElsewhere = side !== undefined && end !== undefined && end > 0 && Math.abs(end - side.site.span) > 0.005;
  return (
    <>
      <Paragraphs of={[...new Set(faults.map(newRigWords.fault))]} className={styles.wrong} />
      {isDrawn && endsElsewhere && (
        <Button
          label={say("ground.stretch", { span: quantity.length(side.site.span) })}
          onClick={() => change(withDrawnGround(answers, stretched(side.points, side.site.span)))}
        />
      )}
      {hand && <SideTools desk={hand} onUndo={undo} />}
    </>
  );
}
