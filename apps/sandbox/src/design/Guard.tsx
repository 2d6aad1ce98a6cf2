import { Component, type ReactNode } from "react";

interface Props {
  /** What stands in its place once it has broken, with the reason. */
  instead: (reason: string) => ReactNode;
  onBroken?: () => void;
  children: ReactNode;
}

/** Around a part that may break: only that part is gone then. */
export class Guard extends Component<Props, { reason: string | undefined }> {
  override state = { reason: undefined };

  static getDerivedStateFromError(error: unknown) {
    return { reason: error instanceof Error ? error.message : String(error) };
  }
  override componentDidCatch() {
    this.props.onBroken?.();
  }
  override render() {
    return this.state.reason === undefined ? this.props.children : this.props.instead(this.state.reason);
  }
}
