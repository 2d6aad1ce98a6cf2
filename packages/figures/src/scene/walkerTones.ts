/** The walker's clothes. Their colours are quiet, with the accent on the shirt, so that the eye finds the person first. */
import type { Theme } from "../palette.ts";

export const WALKER_TONES = ["shirt", "trousers", "skin", "hair", "harness", "shoes"] as const;
export type WalkerTone = (typeof WALKER_TONES)[number];

export const CLOTHES_COLOURS: Readonly<Record<Theme, Readonly<Record<WalkerTone, string>>>> = {
  light: {
    shirt: "#1f7a88",
    trousers: "#4a525a",
    skin: "#d3a283",
    hair: "#43352c",
    harness: "#c2571a",
    shoes: "#2b2f33",
  },
  dark: {
    shirt: "#5fbfcc",
    trousers: "#8b979d",
    skin: "#d9ab8d",
    hair: "#6b5546",
    harness: "#e8722a",
    shoes: "#c3c9ca",
  },
};
