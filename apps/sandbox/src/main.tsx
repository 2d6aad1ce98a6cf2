import "./design/fonts.css";
import "./design/tokens.css";
import "./design/base.css";
import "./design/shared.css";
import { StrictMode, startTransition } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./App.tsx";
import { boot } from "./boot.ts";

const root = document.getElementById("root");
if (!root) throw new Error("index.html has no #root");
// Not awaited at the top: a part that booting asks for may import this script, and would wait for it.
// A transition is rendered in slices, which leaves the page open to a finger.
void boot().then((booted) =>
  startTransition(() =>
    createRoot(root).render(
      <StrictMode>
        <App booted={booted} />
      </StrictMode>,
    ),
  ),
);
