import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { VitePWA } from "vite-plugin-pwa";
import { defineConfig } from "vitest/config";
// @ts-expect-error a plain script
import { languagePlugin } from "../../scripts/language.mjs";
// @ts-expect-error a plain script
import { leanZod } from "../../scripts/leanZod.mjs";
// @ts-expect-error a plain script, shared with the command line's build
import { noticesPlugin, OF_THE_SERVICE_WORKER } from "../../scripts/notices.mjs";
import { HEADERS, META_POLICY } from "./headers.ts";

// fiber has no "exports" map: under Node its CommonJS build would load a second copy of three.
const fiber = fileURLToPath(import.meta.resolve("@react-three/fiber").replace(/\.cjs\.js$/, ".esm.js"));

const ERRATA = new URL("../../packages/scenarios/src/errata/errata.json", import.meta.url);

export default defineConfig({
  // Relative, so that the built app also works from a folder of a static host.
  base: "./",
  // A page of its own, no router: a path that is not there is not found.
  appType: "mpa",
  plugins: [
    react(),
    leanZod(),
    languagePlugin(),
    {
      name: "policy",
      // A page that is served from source reloads by scripts in line.
      apply: "build",
      transformIndexHtml: () => [
        {
          tag: "meta",
          attrs: { "http-equiv": "Content-Security-Policy", content: META_POLICY },
          injectTo: "head-prepend",
        },
      ],
    },
    {
      name: "errata",
      apply: "build",
      generateBundle() {
        this.emitFile({ type: "asset", fileName: "errata.json", source: readFileSync(ERRATA) });
      },
    },
    noticesPlugin("apps/sandbox", OF_THE_SERVICE_WORKER),
    VitePWA({
      // A version that is running is never swapped under the user's hands.
      registerType: "prompt",
      injectRegister: null,
      manifest: {
        name: "Secondline",
        short_name: "Secondline",
        description:
          "What carries the walker when a highline goes wrong, how hard, how far down, and which part goes first.",
        display: "standalone",
        background_color: "#faf8f3",
        theme_color: "#0b5d6b",
        icons: [{ src: "icon.svg", sizes: "any", type: "image/svg+xml", purpose: "any" }],
      },
      workbox: {
        globPatterns: ["**/*.{html,js,css,woff2,svg,txt}"],
        maximumFileSizeToCacheInBytes: 3_000_000,
      },
    }),
  ],
  worker: { format: "es", plugins: () => [languagePlugin()] },
  build: {
    target: "es2023",
    // light-dark() in the tokens is kept as written.
    cssTarget: ["chrome123", "safari17.5", "firefox120"],
    sourcemap: true,
    // What every visit needs, in one script: many small ones compress worse, and it arrives in one go.
    rolldownOptions: { output: { codeSplitting: { groups: [{ name: "page", tags: ["$initial"] }] } } },
    // Three is large and comes by itself, after everything else.
    chunkSizeWarningLimit: 1100,
  },
  server: { host: "127.0.0.1" },
  preview: { host: "127.0.0.1", port: 4173, headers: HEADERS },
  test: {
    name: "sandbox",
    environment: "node",
    include: ["test/**/*.test.{ts,tsx}"],
    // A busy machine is slow, not wrong.
    testTimeout: 60_000,
    alias: { "@react-three/fiber": fiber },
    server: { deps: { inline: [/@react-three/] } },
  },
});
