import { sayPage } from "@secondline/words/page/page";
import { type ReactNode, Suspense } from "react";
import { Guard } from "./Guard.tsx";

interface Props {
  /** What comes, as it is named in a sentence: "The rig sheet". */
  what: string;
  /** Stands here until it is there. */
  fallback?: ReactNode;
  children: ReactNode;
}

/** Around a part whose code comes by itself: where it does not arrive, only that part is missing, and it says so. */
export const Later = ({ what, fallback, children }: Props) => (
  <Guard instead={() => <p role="alert">{sayPage("later.didNotArrive", { what })}</p>}>
    <Suspense fallback={fallback ?? null}>{children}</Suspense>
  </Guard>
);
