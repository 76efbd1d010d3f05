/** How much a reader has to load, raw and packed, beside what it may be. */
import { gzipSync } from "node:zlib";

interface Load {
  readonly what: string;
  readonly files: readonly RegExp[];
  /** kB packed; from the budgets of the design. */
  readonly most?: number;
}

const loads: readonly Load[] = [
  { what: "functions.js", files: [/^functions\.js$/], most: 42 },
  { what: "pane, without functions", files: [/^taskpane\.(js|css|html)$/], most: 200 },
  {
    what: "workbench, first load",
    files: [/^index\.html$/, /^workbench\.(?:grid\.)?(?:css|js)$/],
    most: 1900,
  },
  { what: "help, all pages", files: [/^help\//] },
  { what: "everything", files: [/./] },
];

export interface Size {
  readonly what: string;
  readonly raw: number;
  readonly packed: number;
  readonly most: number | undefined;
}

const packed = (name: string, content: Uint8Array): number =>
  name.endsWith(".png") ? content.length : gzipSync(content).length;

export const sizesOf = (files: ReadonlyMap<string, Uint8Array>): Size[] =>
  loads.map(({ what, files: wanted, most }) => {
    const found = [...files].filter(([name]) => wanted.some((pattern) => pattern.test(name)));
    return {
      what,
      raw: found.reduce((sum, [, content]) => sum + content.length, 0),
      packed: found.reduce((sum, [name, content]) => sum + packed(name, content), 0),
      most,
    };
  });

const kB = (bytes: number): string => (bytes / 1000).toFixed(1).padStart(9);

export const sizeReport = (files: ReadonlyMap<string, Uint8Array>): string =>
  [
    `${"".padEnd(24)}       kB   kB gzip   at most`,
    ...sizesOf(files).map(({ what, raw, packed: small, most }) => {
      const allowed = most === undefined ? "" : String(most).padStart(10);
      const over = most !== undefined && small > most * 1000 ? "  too much" : "";
      return `${what.padEnd(24)}${kB(raw)} ${kB(small)}${allowed}${over}`;
    }),
  ].join("\n");
