/** Groups of fields that many parts of a rig have in common. */
import { valueAt } from "@secondline/rig";
import { spokenField } from "@secondline/words/fields";
import { sayRigSheet } from "@secondline/words/page/rigSheet";
import { endOfKind } from "@secondline/workbench";
import type { ReactNode } from "react";
import { Button } from "../design/Button.tsx";
import { Choice } from "../design/Choice.tsx";
import { Disclosure } from "../design/Disclosure.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { useFaultCount } from "./faults.ts";
import { ConfirmOne, MarkedTitle, useAddPart, useMark } from "./Marks.tsx";
import styles from "./parts.module.css";
import { RigField } from "./RigField.tsx";

/** Rated strength with its basis. */
export function RatedFields({ at }: { at: string }) {
  return (
    <>
      <RigField path={`${at}.strength`} />
      <RigField path={`${at}.basis`} />
    </>
  );
}

/** What has happened to a part. */
export function ConditionFields({ at }: { at: string }) {
  const faults = useFaultCount([at]);
  return (
    <Disclosure title={sayRigSheet("parts.ageWeather")} faults={faults} level={4}>
      <RigField path={`${at}.outside`} help />
      <RigField path={`${at}.sun`} slider />
      <RigField path={`${at}.age`} />
      <RigField path={`${at}.wet`} />
    </Disclosure>
  );
}

/** What its owner thinks of a part, and why. */
export function Own({ at }: { at: string }) {
  const faults = useFaultCount([`${at}.own`]);
  return (
    <Disclosure title={sayRigSheet("parts.ownJudgement")} faults={faults} level={4}>
      <RigField path={`${at}.own.factor`} slider help />
      <RigField path={`${at}.own.reason`} help />
    </Disclosure>
  );
}

/** How a line ends at an anchor; the kind decides which fields there are. */
export function LineEndFields({ at, title }: { at: string; title: string }) {
  const kind = useSandbox((state) => valueAt(state.document.history.present.rig, `${at}.kind`));
  const faults = useFaultCount([at]);
  return (
    <Disclosure title={<MarkedTitle title={title} groups={[at]} />} faults={faults} level={4}>
      <EndKind at={at} />
      {kind === "knot" && <RigField path={`${at}.knot`} />}
      <RatedFields at={at} />
      {kind === "weblock" && (
        <>
          <RigField path={`${at}.slipLoad`} help />
          <RigField path={`${at}.clamped`} help />
        </>
      )}
      <RigField path={`${at}.bend`} help />
      <ConditionFields at={`${at}.condition`} />
      <Own at={at} />
    </Disclosure>
  );
}

/** Changing the kind keeps only what the other kind has too. */
function EndKind({ at }: { at: string }) {
  const end = useSandbox((state) => valueAt(state.document.history.present.rig, at)) as
    | Record<string, unknown>
    | undefined;
  const { edit } = useActions();
  return (
    <ChoiceOfKind at={at} onChange={(kind) => edit(at, endOfKind(end ?? {}, kind), sayRigSheet("parts.kindEnd"))} />
  );
}

export function ChoiceOfKind({ at, onChange }: { at: string; onChange: (kind: string) => void }) {
  const kind = useSandbox((state) => valueAt(state.document.history.present.rig, `${at}.kind`));
  const field = spokenField(`${at}.kind`);
  const options = field?.kind === "choice" ? field.options : [];
  const unconfirmed = useMark(`${at}.kind`);
  return (
    <>
      <Choice
        label={sayRigSheet("parts.kind")}
        value={String(kind ?? "")}
        options={options}
        onChange={onChange}
        unconfirmed={unconfirmed}
      />
      <ConfirmOne path={`${at}.kind`} name={field?.label ?? sayRigSheet("parts.kind")} />
    </>
  );
}

/** What the items of a list are. */
export type PartOfList = "section" | "wornPlace" | "knot" | "ring" | "rockPoint" | "hardware" | "connection" | "tape";

interface ListProps {
  /** Path of the list. */
  at: string;
  part: PartOfList;
  /** A new item, given the ones that are there. */
  make: (items: readonly unknown[]) => unknown;
  /** Least number of items. */
  least?: number;
  titleOf: (item: unknown, index: number) => string;
  children: (path: string, index: number) => ReactNode;
}

/** A list of parts, each behind its title, with ways to add one and to take one out. */
export function PartList({ at, part: name, make, least = 0, titleOf, children }: ListProps) {
  const value = useSandbox((state) => valueAt(state.document.history.present.rig, at));
  const items: readonly unknown[] = Array.isArray(value) ? value : [];
  const { edit } = useActions();
  const add = useAddPart();
  return (
    <div className={styles.list}>
      {items.map((item, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a part is known by its place in the document
        <PartItem key={index} path={`${at}[${index}]`} title={titleOf(item, index)}>
          {children(`${at}[${index}]`, index)}
          {items.length > least && (
            <Button
              tone="quiet"
              icon="bin"
              label={sayRigSheet(`parts.remove.${name}`)}
              onClick={() =>
                edit(at, emptyAsNothing(items.toSpliced(index, 1), least), sayRigSheet(`parts.removed.${name}`))
              }
            />
          )}
        </PartItem>
      ))}
      <Button
        tone="quiet"
        icon="plus"
        label={sayRigSheet(`parts.add.${name}`)}
        onClick={() => {
          const part = make(items);
          add({
            at: `${at}[${items.length}]`,
            part,
            whole: { path: at, value: [...items, part] },
            label: sayRigSheet(`parts.added.${name}`),
          });
        }}
      />
    </div>
  );
}

const emptyAsNothing = (items: readonly unknown[], least: number) =>
  items.length === 0 && least === 0 ? undefined : items;

function PartItem({ path, title, children }: { path: string; title: string; children: ReactNode }) {
  const faults = useFaultCount([path]);
  return (
    <Disclosure title={<MarkedTitle title={title} groups={[path]} />} faults={faults} level={4}>
      {children}
    </Disclosure>
  );
}
