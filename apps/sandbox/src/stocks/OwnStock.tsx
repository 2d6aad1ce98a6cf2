import { newRigWords } from "@secondline/words/newRig";
import type { StockDocument } from "@secondline/workbench";
import { useState } from "react";
import { Button } from "../design/Button.tsx";
import { useActions } from "../state/useSandbox.ts";
import { StockDialog } from "./StockDialog.tsx";

interface Props {
  names: readonly string[];
  onKeep: (stock: StockDocument) => void;
}

/** The way to a webbing or rope of one's own. */
export function OwnStock({ names, onKeep }: Props) {
  const [open, setOpen] = useState(false);
  const { announce } = useActions();
  return (
    <>
      <Button icon="plus" label={newRigWords.say("own.open")} onClick={() => setOpen(true)} />
      <StockDialog
        open={open}
        names={names}
        onClose={() => setOpen(false)}
        onKeep={(stock) => {
          onKeep(stock);
          announce(newRigWords.say("own.added", { name: stock.name ?? stock.id }));
        }}
      />
    </>
  );
}
