/**
 * What each page may load, said in the page itself, so that any web server will do. The help pages say
 * theirs in src/help/page.ts.
 *
 * Inline styles are allowed: the component library and the embedded spreadsheet write them.
 */
const ours = [
  "base-uri 'none'",
  "form-action 'none'",
  "object-src 'none'",
  "style-src 'self' 'unsafe-inline'",
  "font-src 'self' data:",
  "img-src 'self' data: blob:",
];

/** The workbench: nothing but its own files. */
export const workbenchPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "connect-src 'self'",
  "worker-src 'self' blob:",
  ...ours,
].join("; ");

/** Where the spreadsheet program's maker serves its runtime. */
export const runtimeOrigin = "https://appsforoffice.microsoft.com";

/**
 * The pane inside the program: its own files, and the runtime from its maker. Frames are left open:
 * some programs talk to a pane through one.
 */
export const panePolicy = [
  `script-src 'self' ${runtimeOrigin}`,
  `connect-src 'self' ${runtimeOrigin}`,
  "worker-src 'self' blob:",
  ...ours,
].join("; ");
