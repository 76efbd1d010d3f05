/**
 * The pane alone as one script and one sheet of styles. A run of tests makes them once, before its workers
 * begin, and small: every page that is opened reads them anew.
 */
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import type { TestProject } from "vitest/node";

export interface Parts {
  readonly js: string;
  readonly css: string;
}

declare module "vitest" {
  export interface ProvidedContext {
    panePage: Parts;
  }
}

export async function bundle(): Promise<Parts> {
  const built = await build({
    entryPoints: [fileURLToPath(new URL("page.tsx", import.meta.url))],
    bundle: true,
    write: false,
    format: "esm",
    jsx: "automatic",
    outdir: "page",
    minify: true,
    keepNames: true,
    loader: { ".xlsx": "binary" },
    define: { "process.env.NODE_ENV": '"production"' },
  });
  const ending = (with_: string) =>
    built.outputFiles.find(({ path }) => path.endsWith(with_))?.text ?? "";
  return { js: ending(".js"), css: ending(".css") };
}

export default async function setup({ provide }: TestProject): Promise<void> {
  provide("panePage", await bundle());
}
