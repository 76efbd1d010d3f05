/**
 * What each page may load, said in the page itself, so that any web server will do. The help pages say
 * theirs in src/help/page.ts.
 *
 * Inline styles are allowed: the component library and the embedded spreadsheet write them.
 */
const ours = [
  "default-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "style-src 'self' 'unsafe-inline'",
  "font-src 'self' data:",
  "img-src 'self' data: blob:",
  "worker-src 'self' blob:",
];

/** The workbench: nothing but its own files. */
export const workbenchPolicy = ["script-src 'self'", "connect-src 'self'", ...ours].join("; ");

/** Where the spreadsheet program's maker serves its runtime. */
const runtimeOrigin = "https://appsforoffice.microsoft.com";

/**
 * The pane inside the program: its own files, and the runtime from its maker. That runtime would open
 * a frame of a telemetry service three seconds after it has started; no frame is allowed.
 */
export const panePolicy = [
  `script-src 'self' ${runtimeOrigin}`,
  `connect-src 'self' ${runtimeOrigin}`,
  ...ours,
].join("; ");
