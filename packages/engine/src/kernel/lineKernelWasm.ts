/**
 * The hot loop in WebAssembly, two elements at a time (`assembly/lineKernel.ts`); results agree with the TypeScript kernel's
 * to the last bit. One module, compiled once; every run has an instance and a memory of its own, which go when it goes.
 */
import { type LineKernel, typescriptKernel } from "./lineKernel.ts";
import { lineKernelWasmBase64 } from "./lineKernel.wasm.ts";

/** The few platform types that are used here; the engine's `lib` setting has none of them. */
interface WasmPlatform {
  readonly WebAssembly?: {
    validate(bytes: Uint8Array): boolean;
    readonly Module: new (bytes: Uint8Array) => object;
    readonly Memory: new (size: { initial: number; maximum: number }) => { readonly buffer: ArrayBuffer };
    readonly Instance: new (module: object, imports: object) => { readonly exports: object };
  };
  readonly atob?: (text: string) => string;
}
interface WasmExports {
  step(head: number): void;
  row(head: number, place: number): void;
}

const PAGE_BYTES = 65_536;
/** Most pages a memory may have; more than the lines of any problem need. */
const MOST_PAGES = 32_768;

let compiled: object | undefined | null;

/** The compiled module; undefined where there is no WebAssembly with vectors, or a page's policy forbids it. */
function moduleOf({ WebAssembly, atob }: WasmPlatform): object | undefined {
  if (compiled === undefined) {
    compiled = null;
    try {
      const bytes = atob && Uint8Array.from(atob(lineKernelWasmBase64), (character) => character.charCodeAt(0));
      if (WebAssembly && bytes && WebAssembly.validate(bytes)) compiled = new WebAssembly.Module(bytes);
    } catch {
      // Forbidden: the TypeScript kernel gives the same results.
    }
  }
  return compiled ?? undefined;
}

/** The kernel in WebAssembly, on its own memory of so many numbers; undefined if the platform has no WebAssembly. */
export function wasmKernel(size: number): LineKernel | undefined {
  const platform = globalThis as WasmPlatform;
  const module = moduleOf(platform);
  const pages = Math.ceil((8 * size) / PAGE_BYTES);
  if (!module || pages > MOST_PAGES) return undefined;
  try {
    const { Memory, Instance } = platform.WebAssembly!;
    const memory = new Memory({ initial: pages, maximum: pages });
    const { step, row } = new Instance(module, { env: { memory } }).exports as WasmExports;
    return { name: "wasm", memory: new Float64Array(memory.buffer), step, row };
  } catch {
    // No room for another memory: the fallback needs less address space.
    return undefined;
  }
}

/** The fastest kernel there is here: WebAssembly, or TypeScript where that cannot be had. */
export const fastestKernel = (size: number): LineKernel => wasmKernel(size) ?? typescriptKernel(size);
