import type { ComponentProps } from "react";

/** A button inside a sentence: it looks like a link and acts like a button. */
export const TextButton = (props: Pick<ComponentProps<"button">, "onClick" | "children">) => (
  <button type="button" className="text-button" {...props} />
);
