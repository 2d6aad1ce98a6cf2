import { sayPage } from "@secondline/words/page/page";
import { Component, type ReactNode, Suspense } from "react";

interface Props {
  /** What comes, as it is named in a sentence: "The rig sheet". */
  what: string;
  /** Stands here until it is there. */
  fallback?: ReactNode;
  children: ReactNode;
}

/** Around a part whose code comes by itself: where it does not arrive, only that part is missing, and it says so. */
export class Later extends Component<Props, { missing: boolean }> {
  override state = { missing: false };

  static getDerivedStateFromError() {
    return { missing: true };
  }

  override render() {
    const { what, fallback, children } = this.props;
    if (this.state.missing) return <p role="alert">{sayPage("later.didNotArrive", { what })}</p>;
    return <Suspense fallback={fallback ?? null}>{children}</Suspense>;
  }
}
