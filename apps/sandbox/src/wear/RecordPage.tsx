import { sayWear } from "@secondline/words/page/wear";
import { dayOf } from "@secondline/workbench";
import {
  outlookOf,
  ownerName,
  partStateWords,
  stateWords,
  takeDownMark,
  type WebbingFacts,
  whereAndWhat,
  zoneRows,
} from "@secondline/workbench/record";
import { Disclosure } from "../design/Disclosure.tsx";
import { Table } from "../design/Table.tsx";
import { useWear, useWearActions, useWearState, useWebbingFacts } from "../wearInHand/useWear.ts";
import { AlongFigure } from "./AlongFigure.tsx";
import { CalendarFigure } from "./CalendarFigure.tsx";

import { Messages } from "./EntryForm.tsx";
import { EntryList } from "./EntryList.tsx";
import { OwnerChoice, OwnerFields, StockOf } from "./OwnerChoice.tsx";
import { InTheVerdict, Places } from "./Places.tsx";
import { PlanOfUse } from "./PlanOfUse.tsx";
import { SiteOfRecord } from "./SiteOfRecord.tsx";
import { TakeDownPart } from "./TakeDownPart.tsx";
import { useTakeDown } from "./useTakeDown.ts";
import styles from "./wear.module.css";

/** One webbing or part: where what lies on it, when what happened to it, and until when the rig may stay up. */
export function RecordPage({ wide }: { wide: boolean }) {
  const facts = useWebbingFacts();
  const takeDown = useTakeDown();
  const mark = takeDownMark(outlookOf(takeDown));
  const empty = useWear(({ work }) => (work.record.webbings?.length ?? 0) + (work.record.parts?.length ?? 0) === 0);
  if (empty) return <Empty />;
  // On a narrow screen what to look at comes before the long list.
  const entries = (
    <div>
      <EntryList />
      <OwnerFields facts={facts} />
    </div>
  );
  return (
    <div className={styles.record}>
      <div className={styles.mainColumn}>
        <Head facts={facts} />
        {facts && !facts.stock && <StockOf facts={facts} />}
        {facts && <AlongFigure facts={facts} wide={wide} />}
        {facts && facts.zones.length > 0 && <ZoneTable facts={facts} />}
        <CalendarFigure {...{ wide, mark }} />
        {wide && entries}
      </div>
      <div className={styles.sideColumn}>
        <Places />
        <TakeDownPart state={takeDown} />
        <InTheVerdict />
        <PlanOfUse />
        <SiteOfRecord />
        {!wide && entries}
      </div>
    </div>
  );
}

function Empty() {
  return (
    <div className={styles.record}>
      <div className={styles.mainColumn}>
        <p className={styles.serif}>{sayWear("recordPage.emptyRecord")}</p>
        <div className={styles.buttons}>
          <OwnerChoice />
        </div>
      </div>
    </div>
  );
}

function Head({ facts }: { facts: WebbingFacts | undefined }) {
  const record = useWear((state) => state.work.record);
  const on = useWear((state) => state.on);
  const owner = useWear((state) => state.owner);
  const issues = useWear((state) => state.issues);
  const part = useWearState().parts[owner.index];
  const { look } = useWearActions();
  const said = facts ? stateWords(facts.state) : owner.list === "parts" && part ? partStateWords(part) : "";
  return (
    <header className={styles.head}>
      <h2 className="visually-hidden">{ownerName(record, owner)}</h2>
      <div className={styles.choices}>
        <OwnerChoice />
        <label className={styles.onField}>
          {sayWear("recordPage.asOf")}
          <input
            type="date"
            value={on}
            onChange={({ target }) => dayOf(target.value) !== undefined && look({ on: target.value })}
          />
        </label>
      </div>
      <p className={styles.serif}>{said}</p>
      {record.invented === true && <p className={styles.warn}>{sayWear("recordPage.inventedCaution")}</p>}
      {issues.length > 0 && (
        <>
          <p className={styles.wrong}>{sayWear("recordPage.faultCount", { count: issues.length })}</p>
          <Messages messages={[...new Set(issues.map(whereAndWhat))].slice(0, 6)} />
        </>
      )}
    </header>
  );
}

const ZONE_HEADS = [
  sayWear("recordPage.from"),
  sayWear("recordPage.to"),
  sayWear("recordPage.strength5"),
  sayWear("recordPage.middle"),
  sayWear("recordPage.reason"),
  sayWear("recordPage.bases"),
];

function ZoneTable({ facts }: { facts: WebbingFacts }) {
  return (
    <Disclosure title={sayWear("recordPage.asTable")}>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls sideways must be reachable by keyboard */}
      <section className={styles.tableWrap} aria-label={sayWear("recordPage.strengthPlace")} tabIndex={0}>
        <Table heads={ZONE_HEADS} rows={zoneRows(facts.zones)} className={styles.table} />
      </section>
    </Disclosure>
  );
}
