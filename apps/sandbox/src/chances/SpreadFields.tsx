import type { Rig } from "@secondline/rig";
import { uncertainInputs, type WhatIf } from "@secondline/scenarios";
import { broughtIn, tellBasis } from "@secondline/words";
import { englishChanceWords as chanceWords } from "@secondline/words/chances";
import { sayChances } from "@secondline/words/page/chances";
import { type ChancesDesk, readSpread } from "@secondline/workbench";
import { useStore } from "zustand";
import { Disclosure } from "../design/Disclosure.tsx";
import { TextField } from "../design/TextField.tsx";
import styles from "./chances.module.css";
import { SPREAD_FAULT } from "./spreadText.ts";

interface Props {
  desk: ChancesDesk;
  rig: Rig;
  whatIf: WhatIf;
}

/** How far every input may be off, to be changed. */
export function SpreadFields({ desk, rig, whatIf }: Props) {
  const spreads = useStore(desk.store, (state) => state.spreads);
  const inputs = uncertainInputs(rig, whatIf);
  const wrong = Object.values(spreads).filter((text) => readSpread(text) === undefined).length;
  return (
    <Disclosure title={sayChances("spreadFields.title")} level={4} faults={wrong}>
      <div className={styles.spreads}>
        {inputs.map((input) => {
          const typed = spreads[input.id];
          const off = typed !== undefined && readSpread(typed) === undefined;
          const [middle] = chanceWords.chanceInput(input);
          const basis =
            typed === undefined
              ? `${broughtIn(input.basis.kind)}: ${tellBasis(input.basis.note)}`
              : sayChances("spreadFields.hint");
          return (
            <TextField
              key={input.id}
              label={`${broughtIn(input.name)} ±`}
              value={typed ?? `${Number((100 * input.spread).toPrecision(3))} %`}
              onChange={(text) => desk.type(input.id, text)}
              messages={off ? [SPREAD_FAULT] : []}
              note={`${input.unit === "line" ? sayChances("spreadFields.placeHint", { middle }) : middle} · ${basis}`}
            />
          );
        })}
      </div>
    </Disclosure>
  );
}
