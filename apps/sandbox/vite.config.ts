import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vitest/config";

// fiber has no "exports" map: under Node its CommonJS build would load a second copy of three.
const fiber = fileURLToPath(import.meta.resolve("@react-three/fiber").replace(/\.cjs\.js$/, ".esm.js"));

export default defineConfig({
  // Relative, so that the built app also works from a folder of a static host.
  base: "./",
  plugins: [react()],
  worker: { format: "es" },
  build: {
    target: "es2023",
    // light-dark() in the tokens is kept as written.
    cssTarget: ["chrome123", "safari17.5", "firefox120"],
    sourcemap: true,
  },
  server: { host: "127.0.0.1" },
  preview: { host: "127.0.0.1", port: 4173 },
  test: {
    name: "sandbox",
    environment: "node",
    include: ["test/**/*.test.{ts,tsx}"],
    alias: { "@react-three/fiber": fiber },
    server: { deps: { inline: [/@react-three/] } },
  },
});
