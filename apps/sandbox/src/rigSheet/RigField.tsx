import {
  exampleText,
  type Field,
  parseQuantity,
  type QuantityField,
  quantityText,
  stocksIn,
  valueAt,
} from "@secondline/rig";
import { spokenField } from "@secondline/words/fields";
import { sayRigSheet } from "@secondline/words/page/rigSheet";
import { moveAnchorB, roundStep, typedQuantity } from "@secondline/workbench";
import { Choice } from "../design/Choice.tsx";
import { Paragraphs } from "../design/Lines.tsx";
import { RangeSlider } from "../design/RangeSlider.tsx";
import { TextField } from "../design/TextField.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { StockChoice } from "../stocks/StockChoice.tsx";
import { useFaultsAt } from "./faults.ts";
import { ConfirmOne, useMark } from "./Marks.tsx";
import styles from "./RigField.module.css";

interface Props {
  /** Path in the document, e.g. "main.sections[0].length". */
  path: string;
  /** Instead of the field's own label, where the group around it does not say what it is. */
  label?: string;
  /** A slider below, when the field has a natural range. */
  slider?: boolean;
  /** Shown under the field; default: nothing. */
  help?: boolean;
}

/** One field of the rig document, made from the field table: label, text as typed, faults beside it, a slider. */
export function RigField(props: Props) {
  const name = props.label ?? spokenField(props.path)?.label ?? props.path;
  return (
    <>
      <FieldItself {...props} />
      <ConfirmOne path={props.path} name={name} />
    </>
  );
}

function FieldItself({ path, label, slider = false, help = false }: Props) {
  const field = spokenField(path);
  if (!field) throw new Error(`There is no field at ${path}`);
  const name = label ?? field.label;
  switch (field.kind) {
    case "quantity":
      return <Quantity path={path} field={field} name={name} slider={slider} help={help} />;
    case "choice":
      return <OneOf path={path} name={name} options={field.options} fallback={field.fallback} />;
    case "stock":
      return <Stock path={path} name={name} />;
    case "flag":
      return <YesOrNo path={path} name={name} />;
    default:
      return <Words path={path} field={field} name={name} help={help} />;
  }
}

function useValue(path: string): unknown {
  return useSandbox((state) => valueAt(state.document.history.present.rig, path));
}

function Quantity({
  path,
  field,
  name,
  slider,
  help,
}: {
  path: string;
  field: QuantityField;
  name: string;
  slider: boolean;
  help: boolean;
}) {
  const value = useValue(path);
  const messages = useFaultsAt(path);
  const unconfirmed = useMark(path);
  const { edit, change, finishEdit, look } = useActions();
  const written = value === undefined ? "" : String(value);
  const read = parseQuantity(value ?? field.fallback, field.dimension);
  const like = typeof value === "string" ? value : exampleText(field.dimension);
  const put = (text: string, group: string) =>
    path === "span" || path === "rise"
      ? change((before) => moveAnchorB(before, path, text), name, group)
      : edit(path, typedQuantity(text, field), name, group);
  return (
    <div className={styles.quantity}>
      <TextField
        label={name}
        value={written}
        placeholder={field.fallback === undefined ? "" : String(field.fallback)}
        messages={messages}
        unconfirmed={unconfirmed}
        {...(help ? { hint: field.help } : {})}
        onChange={(text) => put(text, `type ${path}`)}
        onFocus={() => look({ editing: path })}
        onBlur={() => {
          finishEdit();
          look({ editing: undefined });
        }}
      />
      {slider && field.natural && (
        <RangeSlider
          label={name}
          value={read.ok ? read.value : field.natural[0]}
          min={field.natural[0]}
          max={field.natural[1]}
          step={roundStep(field.natural)}
          say={(si) => quantityText(si, field.dimension, like)}
          onChange={(si) => put(quantityText(si, field.dimension, like), `slide ${path}`)}
          onCommit={finishEdit}
        />
      )}
    </div>
  );
}

function OneOf({
  path,
  name,
  options,
  fallback,
}: {
  path: string;
  name: string;
  options: readonly { value: string; label: string }[];
  fallback?: string | undefined;
}) {
  const value = useValue(path);
  const unconfirmed = useMark(path);
  const { edit, look } = useActions();
  return (
    <Choice
      label={name}
      unconfirmed={unconfirmed}
      value={String(value ?? fallback ?? "")}
      options={options}
      onChange={(next) => edit(path, next, name)}
      onFocus={() => look({ editing: path })}
    />
  );
}

function Stock({ path, name }: { path: string; name: string }) {
  const document = useSandbox((state) => state.document.history.present.rig);
  const value = useValue(path);
  const unconfirmed = useMark(path);
  const messages = useFaultsAt(path);
  const { edit, look } = useActions();
  return (
    <>
      <StockChoice
        label={name}
        value={String(value ?? "")}
        own={stocksIn(document)}
        unconfirmed={unconfirmed}
        onChange={(id) => edit(path, id, name)}
        onFocus={() => look({ editing: path })}
      />
      <Paragraphs of={messages} className={styles.wrong} />
    </>
  );
}

const ANSWERS = [
  { value: "", label: sayRigSheet("rigField.notSaid") },
  { value: "no", label: sayRigSheet("rigField.no") },
  { value: "yes", label: sayRigSheet("rigField.yes") },
] as const;

/** "No" is an answer, and more than no answer: what is not said counts at its worst. */
function YesOrNo({ path, name }: { path: string; name: string }) {
  const value = useValue(path);
  const { edit, look } = useActions();
  return (
    <Choice
      label={name}
      value={value === undefined ? "" : value === true ? "yes" : "no"}
      options={ANSWERS}
      onChange={(answer) => edit(path, answer === "" ? undefined : answer === "yes", name)}
      onFocus={() => look({ editing: path })}
    />
  );
}

function Words({ path, field, name, help }: { path: string; field: Field; name: string; help: boolean }) {
  const value = useValue(path);
  const messages = useFaultsAt(path);
  const { edit, finishEdit, look } = useActions();
  return (
    <TextField
      label={name}
      value={value === undefined ? "" : String(value)}
      messages={messages}
      wide
      {...(help ? { hint: field.help } : {})}
      onChange={(text) => edit(path, text === "" ? undefined : text, name, `type ${path}`)}
      onFocus={() => look({ editing: path })}
      onBlur={() => {
        finishEdit();
        look({ editing: undefined });
      }}
    />
  );
}
