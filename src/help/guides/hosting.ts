/** For whoever serves Titrebook to others. */
import { block, type Guide, heading, points, steps, table, text } from "./guide";

export const hosting: Guide = {
  file: "hosting.html",
  title: "Hosting it for others",
  lead: "A folder of files on any web server with https is all it takes, and updates never break a workbook that is open.",
  parts: [
    heading("Make the files"),
    block("npm ci", "npm run build -- --env base=https://your.host/titrebook"),
    text(
      "Every address is written for that base; the build fails when an address of your own machine is left. The files are in `dist`: copy all of them into the folder that `https://your.host/titrebook/` serves. `--env out=some/folder` writes them elsewhere.",
    ),
    text(
      "`checksums.txt` lists the SHA-256 sum of every file. On the server: `sha256sum -c checksums.txt`. Give your members the address of `install/` there: one zip with what makes Titrebook known to their Excel, and its undoing ([the steps](install.html)). It names your address, so theirs must come from your build.",
    ),
    heading("On GitHub Pages"),
    steps(
      "Fork the project. _Settings_, _Pages_, _Source_: _GitHub Actions_.",
      "_Actions_: switch workflows on, choose _Publish the built files_, _Run workflow_. It builds for the address of your fork's pages, checks the sums and publishes; for a new version, bring the fork up to date and press it again. It never runs by itself.",
      "Your members go to `install/` below that address. The pages are public; no workbook is among them.",
    ),
    text(
      "The workflow stands in `.github/workflows/pages.yml`; it has not been run there yet. The headers below are the host's to set: `Access-Control-Allow-Origin: *` is commonly reported of it, and files are kept for ten minutes.",
    ),
    heading("What the server must do"),
    table(
      ["Header or setting", "For", "Why"],
      ["https with a certificate that browsers trust", "all", "The program loads nothing else."],
      [
        "`Access-Control-Allow-Origin: *`",
        "`functions.json`, `functions.js`",
        "The program on the web asks for them from its own address.",
      ],
      [
        "`Cache-Control: no-cache`",
        "`*.html`, `functions.json`, `functions.js`, `manifest.xml`",
        "Kept, but asked about each time: a new version is seen at the next start.",
      ],
      [
        "`Cache-Control: max-age=31536000, immutable`",
        "`taskpane*.js`, `workbench*.js` and their `.css`, asked for with a `?`",
        "Optional: what stands behind the `?` changes with every build.",
      ],
      [
        "`Content-Security-Policy: frame-ancestors 'none'`",
        "`index.html`, `help/*.html`",
        "Advised: no other site can put the browser page into a frame of its own. Beside the pages' own policy.",
      ],
      [
        "`X-Content-Type-Options: nosniff`, `Referrer-Policy: no-referrer`",
        "all",
        "Advised: files are taken for what they are, and no address is told to others.",
      ],
      [
        "no `X-Frame-Options`, no `frame-ancestors`",
        "`taskpane.html`",
        "On the web the pane stands in a frame of the program.",
      ],
      [
        "`Content-Type`",
        "`.js` text/javascript, `.json` application/json, `.html` text/html",
        "Usual on every server.",
      ],
    ),
    text(
      "Each page carries its own content security policy: no code but its own files, no `eval`, nobody else to speak to. So none has to be set, but for frames. The help and the browser page load nothing but their own files; the pane loads its own files and the program's runtime from `https://appsforoffice.microsoft.com`. See [privacy](privacy.html).",
    ),
    heading("Update"),
    steps(
      "Build the new version and check its sums.",
      "Copy the scripts first and the pages last, or switch the whole folder at once. Keep the base: workbooks and manifests point there.",
      "Members need not do anything. Only when `manifest.xml` itself has changed, in its texts or its icons, do they install it again.",
    ),
    heading("Why nothing breaks"),
    points(
      "Ids and the order of arguments never change; only optional arguments are added, at the end.",
      "For up to a day a program may use an old list of functions with new code, or the other way round. Both answer: an argument that is not known yet counts as left out, and one too many is ignored.",
      "A workbook that is open keeps its values until a cell is worked out again.",
      "A function that an old copy does not know shows an error in its own cell alone. _Ask again_ in the pane mends #NAME?.",
    ),
    heading("Go back"),
    text(
      "Copy the former files over the new ones. Workbooks hold formulas and values, never code.",
    ),
  ],
};
