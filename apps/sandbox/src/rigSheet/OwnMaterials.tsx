import { sayRigSheet } from "@secondline/words/page/rigSheet";
import { Fragment } from "react";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { OwnStock } from "../stocks/OwnStock.tsx";
import { RigField } from "./RigField.tsx";

/** Webbings and ropes that the file describes itself: what they are called, what they hold and weigh, and the way to one more. */
export function OwnMaterials() {
  const written = useSandbox(({ document }) => (document.history.present.rig as { stocks?: unknown }).stocks);
  const { edit } = useActions();
  const stocks: readonly { readonly name?: unknown; readonly id?: unknown }[] = Array.isArray(written) ? written : [];
  return (
    <>
      {stocks.map((_, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a material is known by its place in the document
        <Fragment key={index}>
          {OWN_FIELDS.map((name) => (
            <RigField key={name} path={`stocks[${index}].${name}`} />
          ))}
        </Fragment>
      ))}
      <OwnStock
        names={stocks.map(({ name, id }) => String(name ?? id))}
        onKeep={(stock) => edit("stocks", [...stocks, stock], sayRigSheet("rigSheet.ownMaterial"))}
      />
    </>
  );
}

const OWN_FIELDS = ["name", "fibre", "form", "strength", "basis", "mass"];
