import "./design/fonts.css";
import "./design/tokens.css";
import "./design/base.css";
import "./design/shared.css";
import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./App.tsx";
import { boot } from "./boot.ts";

const root = document.getElementById("root");
if (!root) throw new Error("index.html has no #root");
// Not awaited at the top: a part that booting asks for may import this script, and would wait for it.
void boot().then((booted) =>
  createRoot(root).render(
    <StrictMode>
      <App booted={booted} />
    </StrictMode>,
  ),
);
