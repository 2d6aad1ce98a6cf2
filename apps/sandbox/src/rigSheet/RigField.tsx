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
  /** Of a choice that may be left open: what leaving it open amounts to. */
  unsaid?: string;
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

function FieldItself({ path, label, unsaid, slider = false, help = false }: Props) {
  const field = spokenField(path);
  if (!field) throw new Error(`There is no field at ${path}`);
  const name = label ?? field.label;
  switch (field.kind) {
    case "quantity":
      return <Quantity path={path} field={field} name={name} slider={slider} help={help} />;
    case "choice":
      return <OneOf {...{ path, name, unsaid }} options={field.options} fallback={field.fallback} />;
    case "stock":
      return <Stock path={path} name={name} />;
    case "flag":
      return <YesOrNo path={path} name={name} />;
    default:
      return <Words path={path} field={field} name={name} help={help} />;
  }
}

/** A field as the document has it, and ways to change it; the rig sheet's sketch shows which one is edited. */
function useField(path: string, name: string) {
  const value = useSandbox((state) => valueAt(state.document.history.present.rig, path));
  const messages = useFaultsAt(path);
  const unconfirmed = useMark(path);
  const { edit, finishEdit, look } = useActions();
  return {
    value,
    written: value === undefined ? "" : String(value),
    messages,
    unconfirmed,
    put: (next: unknown, group?: string) => edit(path, next, name, group),
    onFocus: () => look({ editing: path }),
    onBlur() {
      finishEdit();
      look({ editing: undefined });
    },
  };
}

type FieldProps = Required<Pick<Props, "path" | "help">> & { name: string };

function Quantity({ path, field, name, slider, help }: FieldProps & { field: QuantityField; slider: boolean }) {
  const { value, written, messages, unconfirmed, put: putText, onFocus, onBlur } = useField(path, name);
  const { change, finishEdit } = useActions();
  const read = parseQuantity(value ?? field.fallback, field.dimension);
  const like = typeof value === "string" ? value : exampleText(field.dimension);
  const put = (text: string, group: string) =>
    path === "span" || path === "rise"
      ? change((before) => moveAnchorB(before, path, text), name, group)
      : putText(typedQuantity(text, field), group);
  return (
    <div className={styles.quantity}>
      <TextField
        label={name}
        value={written}
        placeholder={field.fallback === undefined ? "" : String(field.fallback)}
        hint={help ? field.help : undefined}
        {...{ messages, unconfirmed, onFocus, onBlur }}
        onChange={(text) => put(text, `type ${path}`)}
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

interface OneOfProps extends Omit<FieldProps, "help"> {
  options: readonly { value: string; label: string }[];
  fallback?: string | undefined;
  unsaid: string | undefined;
}

function OneOf({ path, name, options, fallback, unsaid }: OneOfProps) {
  const { value, unconfirmed, put, onFocus } = useField(path, name);
  return (
    <Choice
      label={name}
      value={String(value ?? fallback ?? "")}
      options={unsaid === undefined ? options : [{ value: "", label: unsaid }, ...options]}
      {...{ unconfirmed, onFocus }}
      onChange={(next) => put(next === "" ? undefined : next)}
    />
  );
}

function Stock({ path, name }: Omit<FieldProps, "help">) {
  const document = useSandbox((state) => state.document.history.present.rig);
  const { written, messages, unconfirmed, put, onFocus } = useField(path, name);
  return (
    <>
      <StockChoice
        label={name}
        value={written}
        own={stocksIn(document)}
        {...{ unconfirmed, onFocus }}
        onChange={(id) => put(id)}
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
function YesOrNo({ path, name }: Omit<FieldProps, "help">) {
  const { value, put, onFocus } = useField(path, name);
  return (
    <Choice
      label={name}
      value={value === undefined ? "" : value === true ? "yes" : "no"}
      options={ANSWERS}
      onChange={(answer) => put(answer === "" ? undefined : answer === "yes")}
      onFocus={onFocus}
    />
  );
}

function Words({ path, field, name, help }: FieldProps & { field: Field }) {
  const { written, messages, put, onFocus, onBlur } = useField(path, name);
  return (
    <TextField
      label={name}
      value={written}
      wide
      hint={help ? field.help : undefined}
      {...{ messages, onFocus, onBlur }}
      onChange={(text) => put(text === "" ? undefined : text, `type ${path}`)}
    />
  );
}
