import { GENERIC_STOCKS } from "@secondline/rig";
import { stockName } from "@secondline/words";
import { sayRecord } from "@secondline/words/page/record";
import { ownerPath } from "@secondline/workbench";
import {
  messagesUnder,
  ownerFields,
  ownerName,
  ownersIn,
  ownerValue,
  type WebbingFacts,
  withFreshWebbing,
  withOwnerField,
  withoutOwner,
} from "@secondline/workbench/record";
import { useState } from "react";
import { Button } from "../design/Button.tsx";
import { Choice } from "../design/Choice.tsx";
import { Disclosure } from "../design/Disclosure.tsx";
import { TextField } from "../design/TextField.tsx";
import { useWear, useWearActions } from "../wearInHand/useWear.ts";
import styles from "./wear.module.css";

const NOT_SAID = "none";

/** Which webbing or part the page shows. */
export function OwnerChoice() {
  const record = useWear((state) => state.work.record);
  const owner = useWear((state) => state.owner);
  const { look, edit } = useWearActions();
  const owners = ownersIn(record);
  function addWebbing(): void {
    const fresh = withFreshWebbing(record);
    edit(fresh.record, sayRecord("ownerChoice.webbingAdded"));
    look({ owner: fresh.owner, entry: undefined });
  }
  return (
    <>
      {owners.length > 0 && (
        <Choice
          label={sayRecord("ownerChoice.webbingOrPart")}
          compact
          value={ownerPath(owner)}
          options={owners.map((one) => ({ value: ownerPath(one), label: ownerName(record, one) }))}
          onChange={(path) => look({ owner: owners.find((one) => ownerPath(one) === path)!, entry: undefined })}
        />
      )}
      <Button
        icon="plus"
        label={sayRecord("ownerChoice.webbing")}
        title={sayRecord("ownerChoice.addWebbingRecord")}
        onClick={addWebbing}
      />
    </>
  );
}

/** Name, length and mark of the webbing; what it is made of, when no rig at hand says so. */
export function OwnerFields({ facts }: { facts: WebbingFacts | undefined }) {
  const record = useWear((state) => state.work.record);
  const owner = useWear((state) => state.owner);
  const issues = useWear((state) => state.issues);
  const { edit, finish, look } = useWearActions();
  if (!record[owner.list]?.[owner.index]) return null;
  const path = ownerPath(owner);
  const fields = ownerFields(owner).map((field) => ({
    field,
    messages: messagesUnder(issues, `${path}.${field.key}`),
  }));
  return (
    <Disclosure
      title={sayRecord(owner.list === "webbings" ? "ownerChoice.thisWebbing" : "ownerChoice.thisPart")}
      faults={fields.reduce((sum, { messages }) => sum + messages.length, 0)}
    >
      {fields.map(({ field, messages }) => (
        <TextField
          key={field.key}
          type={field.kind === "date" ? "date" : "text"}
          wide={field.kind === "words"}
          label={field.label}
          hint={field.hint}
          value={ownerValue(record, owner, field.key)}
          messages={messages}
          onChange={(text) =>
            edit(
              withOwnerField(record, owner, field, text),
              sayRecord("ownerChoice.changed", { field: field.key }),
              `${path}.${field.key}`,
            )
          }
          onBlur={finish}
        />
      ))}
      {facts && <StockOf facts={facts} />}
      <RemoveOwner
        what={ownerName(record, owner)}
        onRemove={() => {
          edit(withoutOwner(record, owner), sayRecord("ownerChoice.removedRecord"));
          look({ owner: { list: "webbings", index: 0 }, entry: undefined });
        }}
      />
    </Disclosure>
  );
}

function RemoveOwner({ what, onRemove }: { what: string; onRemove: () => void }) {
  const [asked, ask] = useState(false);
  if (!asked)
    return <Button tone="quiet" icon="bin" label={sayRecord("ownerChoice.removeRecord")} onClick={() => ask(true)} />;
  return (
    <div className={styles.buttons}>
      <Button label={sayRecord("ownerChoice.remove", { what })} onClick={onRemove} />
      <Button tone="quiet" label={sayRecord("ownerChoice.keep")} onClick={() => ask(false)} />
    </div>
  );
}

/** The open rig says what a webbing is made of; without it, the reader does. */
export function StockOf({ facts }: { facts: WebbingFacts }) {
  const stocks = useWear((state) => state.work.stocks);
  const { change } = useWearActions();
  if (facts.fromRig)
    return (
      <p className={styles.note}>
        {sayRecord("ownerChoice.madeOfByRig", { name: stockName(facts.stock?.name ?? "") })}
      </p>
    );
  const options = [
    { value: NOT_SAID, label: sayRecord("ownerChoice.notSaid") },
    ...[...GENERIC_STOCKS.values()]
      .filter(({ id }) => id.includes("webbing"))
      .map(({ id, name }) => ({ value: id, label: stockName(name) })),
  ];
  return (
    <Choice
      label={sayRecord("ownerChoice.madeOf")}
      value={facts.stock?.id ?? NOT_SAID}
      options={options}
      onChange={(id) => change({ stocks: { ...stocks, [facts.state.id]: id } }, sayRecord("ownerChoice.madeOfStep"))}
    />
  );
}
