import { sayPage } from "@secondline/words/page/page";
import { lazy, useState } from "react";
import { Later } from "../design/Later.tsx";

const EvidenceSheet = lazy(() => import("./EvidenceSheet.tsx"));

/** The step from a verdict to what its numbers were checked against; the page itself comes when it is asked for. */
export function HowWeKnow({ className }: { className: string | undefined }) {
  const [open, setOpen] = useState<boolean>();
  return (
    <>
      <button type="button" className={className} aria-haspopup="dialog" onClick={() => setOpen(true)}>
        {sayPage("howWeKnow.howDoWe")}
      </button>
      {open !== undefined && (
        <Later what={sayPage("howWeKnow.page")}>
          <EvidenceSheet open={open} onClose={() => setOpen(false)} />
        </Later>
      )}
    </>
  );
}
