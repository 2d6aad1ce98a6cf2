import { valueAt } from "@secondline/rig";
import { spokenField } from "@secondline/words/fields";
import { sayRigSheet } from "@secondline/words/page/rigSheet";
import type { SheetField, SheetItem, SheetKind, SheetList } from "@secondline/workbench";
import type { ReactNode } from "react";
import { Button } from "../design/Button.tsx";
import { Choice } from "../design/Choice.tsx";
import { Disclosure } from "../design/Disclosure.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { useFaultCount } from "./faults.ts";
import styles from "./Items.module.css";
import { ConfirmOne, MarkedTitle, useAddPart, useMark } from "./Marks.tsx";
import { RigField } from "./RigField.tsx";

/** Items of the sheet, one below the other. */
export function Items({ of }: { of: readonly SheetItem[] }) {
  return of.map((item) => <Item key={`${item.kind} ${item.at}`} item={item} />);
}

function Item({ item }: { item: SheetItem }) {
  switch (item.kind) {
    case "field":
      return item.onlyWritten ? <WrittenField {...item} /> : <Field {...item} />;
    case "fold":
      return (
        <Fold title={item.title} at={item.at}>
          <Items of={item.items} />
        </Fold>
      );
    case "list":
      return <PartList {...item} />;
    case "kind":
      return <KindOfPart {...item} />;
  }
}

const Field = ({ kind: _, onlyWritten: _only, at, ...look }: SheetField) => <RigField path={at} {...look} />;

const useWritten = (at: string) => useSandbox((state) => valueAt(state.document.history.present.rig, at));

const WrittenField = (item: SheetField) => useWritten(item.at) !== undefined && <Field {...item} />;

/** Faults and unconfirmed values at or below `at` are counted beside the title. */
function Fold({ title, at, children }: { title: string; at: string; children: ReactNode }) {
  const faults = useFaultCount([at]);
  return (
    <Disclosure title={<MarkedTitle title={title} groups={[at]} />} faults={faults} level={4}>
      {children}
    </Disclosure>
  );
}

/** Changing the kind keeps only what the other kind has too. */
function KindOfPart({ at, step, change, itemsOf }: SheetKind) {
  const part = (useWritten(at) ?? {}) as Readonly<Record<string, unknown>>;
  const { edit } = useActions();
  const field = spokenField(`${at}.kind`);
  const label = sayRigSheet("parts.kind");
  const unconfirmed = useMark(`${at}.kind`);
  return (
    <>
      <Choice
        label={label}
        value={String(part.kind ?? "")}
        options={field?.kind === "choice" ? field.options : []}
        onChange={(kind) => edit(at, change(part, kind), step)}
        unconfirmed={unconfirmed}
      />
      <ConfirmOne path={`${at}.kind`} name={field?.label ?? label} />
      <Items of={itemsOf(part)} />
    </>
  );
}

function PartList({ at, part: name, least, make, titleOf, itemsAt }: SheetList) {
  const value = useWritten(at);
  const parts: readonly unknown[] = Array.isArray(value) ? value : [];
  const { edit } = useActions();
  const add = useAddPart();
  const pathOf = (index: number) => `${at}[${index}]`;
  function remove(index: number): void {
    const left = parts.toSpliced(index, 1);
    edit(at, left.length === 0 && least === 0 ? undefined : left, sayRigSheet(`parts.removed.${name}`));
  }
  function addOne(): void {
    const part = make(parts);
    const whole = { path: at, value: [...parts, part] };
    add({ at: pathOf(parts.length), part, whole, label: sayRigSheet(`parts.added.${name}`) });
  }
  return (
    <div className={styles.list}>
      {parts.map((part, index) => (
        <Fold key={pathOf(index)} at={pathOf(index)} title={titleOf(part, index + 1)}>
          <Items of={itemsAt(pathOf(index))} />
          {parts.length > least && (
            <Button tone="quiet" icon="bin" label={sayRigSheet(`parts.remove.${name}`)} onClick={() => remove(index)} />
          )}
        </Fold>
      ))}
      <Button tone="quiet" icon="plus" label={sayRigSheet(`parts.add.${name}`)} onClick={addOne} />
    </div>
  );
}
