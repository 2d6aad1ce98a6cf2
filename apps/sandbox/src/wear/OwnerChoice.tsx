import { GENERIC_STOCKS } from "@secondline/rig";
import { sayRecord } from "@secondline/words/page/record";
import { freeId, type Owner, ownerPath, type WrittenPart, type WrittenWebbing } from "@secondline/workbench";
import { messagesUnder, ownerName, type WebbingFacts } from "@secondline/workbench/record";
import { useState } from "react";
import { Button } from "../design/Button.tsx";
import { Choice } from "../design/Choice.tsx";
import { Disclosure } from "../design/Disclosure.tsx";
import { TextField } from "../design/TextField.tsx";
import { useWear, useWearActions } from "../wearInHand/useWear.ts";
import { DateField } from "./DateField.tsx";
import styles from "./wear.module.css";

const NOT_SAID = "none";
const keyOf = ({ list, index }: Owner): string => `${list}.${index}`;

/** Which webbing or part the page shows. */
export function OwnerChoice() {
  const record = useWear((state) => state.work.record);
  const owner = useWear((state) => state.owner);
  const { look, edit } = useWearActions();
  const options = [
    ...(record.webbings ?? []).map((_, index) => ({ list: "webbings" as const, index })),
    ...(record.parts ?? []).map((_, index) => ({ list: "parts" as const, index })),
  ].map((one) => ({ value: keyOf(one), label: ownerName(record, one) }));
  function addWebbing(): void {
    const webbings = record.webbings ?? [];
    const fresh: WrittenWebbing = {
      id: freeId(record),
      name: sayRecord("ownerChoice.webbingNumber", { number: webbings.length + 1 }),
      length: "60 m",
      mark: "how the marked end can be told",
      entries: [],
    };
    edit({ ...record, webbings: [...webbings, fresh] }, sayRecord("ownerChoice.webbingAdded"));
    look({ owner: { list: "webbings", index: webbings.length }, entry: undefined });
  }
  return (
    <>
      {options.length > 0 && (
        <Choice
          label={sayRecord("ownerChoice.webbingOrPart")}
          compact
          value={keyOf(owner)}
          options={options}
          onChange={(key) => {
            const [list, index] = key.split(".");
            look({ owner: { list: list as Owner["list"], index: Number(index) }, entry: undefined });
          }}
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
  const item = record[owner.list]?.[owner.index];
  if (!item) return null;
  const path = ownerPath(owner);
  const put = (key: string, value: unknown) => {
    const { [key]: _, ...rest } = item as unknown as Record<string, unknown>;
    const next = value === undefined ? rest : { ...item, [key]: value };
    const items = (record[owner.list] as readonly unknown[]).with(owner.index, next);
    edit({ ...record, [owner.list]: items }, sayRecord("ownerChoice.changed", { field: key }), `${path}.${key}`);
  };
  const messages = (key: string) => messagesUnder(issues, `${path}.${key}`);
  const keys =
    owner.list === "webbings"
      ? (["name", "length", "mark", "made", "firstUse"] as const)
      : (["rig", "part", "made", "firstUse"] as const);
  const faults = keys.reduce((sum, key) => sum + messages(key).length, 0);
  const text = (key: string, label: string, hint?: string) => (
    <TextField
      wide={key !== "length"}
      label={label}
      value={String((item as unknown as Record<string, unknown>)[key] ?? "")}
      messages={messages(key)}
      onChange={(value) => put(key, value)}
      onBlur={finish}
      {...(hint ? { hint } : {})}
    />
  );
  return (
    <Disclosure
      title={owner.list === "webbings" ? sayRecord("ownerChoice.thisWebbing") : sayRecord("ownerChoice.thisPart")}
      faults={faults}
    >
      {owner.list === "webbings" ? (
        <>
          {text("name", sayRecord("ownerChoice.name"))}
          {text("length", sayRecord("ownerChoice.lengthNew"), sayRecord("ownerChoice.unstretched"))}
          {text("mark", sayRecord("ownerChoice.markedEndToldBy"))}
        </>
      ) : (
        <>
          {text("rig", sayRecord("ownerChoice.rig"))}
          {text("part", sayRecord("ownerChoice.part"), sayRecord("ownerChoice.partHint"))}
        </>
      )}
      <DateField
        label={sayRecord("ownerChoice.madeOn")}
        value={item.made ?? ""}
        messages={messages("made")}
        onChange={(made) => put("made", made === "" ? undefined : made)}
        onBlur={finish}
      />
      <DateField
        label={sayRecord("ownerChoice.firstUse")}
        value={item.firstUse ?? ""}
        messages={messages("firstUse")}
        onChange={(day) => put("firstUse", day === "" ? undefined : day)}
        onBlur={finish}
      />
      {facts && <StockOf facts={facts} />}
      <RemoveOwner
        what={ownerName(record, owner)}
        onRemove={() => {
          edit(
            {
              ...record,
              [owner.list]: (record[owner.list] as readonly (WrittenWebbing | WrittenPart)[]).toSpliced(owner.index, 1),
            },
            sayRecord("ownerChoice.removedRecord"),
          );
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

/** The rig in hand says what a webbing is made of; without it, the reader does. */
export function StockOf({ facts }: { facts: WebbingFacts }) {
  const stocks = useWear((state) => state.work.stocks);
  const { change } = useWearActions();
  if (facts.fromRig)
    return <p className={styles.note}>{sayRecord("ownerChoice.madeOfByRig", { name: facts.stock?.name ?? "" })}</p>;
  const options = [
    { value: NOT_SAID, label: sayRecord("ownerChoice.notSaid") },
    ...[...GENERIC_STOCKS.values()]
      .filter(({ id }) => id.includes("webbing"))
      .map(({ id, name }) => ({ value: id, label: name })),
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
