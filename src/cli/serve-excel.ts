/**
 * `npm run serve:excel`: the add-in over https on this machine, made anew at every change of a file.
 * Needs certificates, but nobody needs to have trusted them for the page to be served.
 */
import { readFileSync } from "node:fs";
import webpack, { type Configuration } from "webpack";
import WebpackDevServer from "webpack-dev-server";
import { certificateFiles, certificateFolder } from "./certs/folder";
import { certificateState, saidOf } from "./certs/state";
import { portState } from "./doctor/port-state";

/** Says one sentence and ends the command. */
function stop(sentence: string): never {
  console.error(sentence);
  process.exit(1);
}

const files = certificateFiles(certificateFolder);
const certificates = certificateState(files, new Date());
if (certificates.state !== "good") stop(saidOf(certificates));

/** manifest.xml names 3001; on another port, the manifest that is served names that one. */
const usualPort = 3001;
const port = Number(process.env.PORT ?? usualPort);
if (!Number.isInteger(port) || port < 1 || port > 65_535) stop("PORT: a number from 1 to 65535.");
if ((await portState(port)) !== "free") {
  stop(`Port ${port} is taken by another program: stop it, or choose another with PORT=3101.`);
}

const base = `https://localhost:${port}/`;
const config = (await import(new URL("../../webpack.config.js", import.meta.url).href)) as {
  default: (env: object, options: object) => Promise<(Configuration & { name: string })[]>;
};
const all = await config.default({ base }, { mode: "development" });
const quiet = { stats: "errors-warnings", infrastructureLogging: { level: "warn" } } as const;
const compiler = webpack(
  all.filter(({ name }) => name !== "workbench").map((each) => ({ ...each, ...quiet })),
);
if (!compiler) stop("The build could not be set up.");
const firstBuild = new Promise<void>((built) => {
  compiler.hooks.done.tap("serve:excel", () => {
    built();
  });
});

const server = new WebpackDevServer(
  {
    host: "127.0.0.1",
    port,
    server: {
      type: "https",
      options: {
        ca: readFileSync(files.authority),
        cert: readFileSync(files.certificate),
        key: readFileSync(files.key),
      },
    },
    // the program on the web fetches functions.json from another origin
    headers: { "Access-Control-Allow-Origin": "*" },
    static: false,
    client: {
      overlay: { errors: true, warnings: false },
      // the address of the page: its policy lets it speak to nobody else
      webSocketURL: { protocol: "wss", hostname: "localhost", port },
    },
  },
  compiler,
);
console.log("Building the add-in. This takes less than a minute.");
await server.start();
await firstBuild;

const manifest = port === usualPort ? "manifest.xml" : `${base}manifest.xml (not manifest.xml)`;
console.log(`The add-in is at ${base}taskpane.html (Ctrl+C ends it). Load ${manifest}.`);
console.log(
  process.platform === "linux"
    ? "Nothing on this system trusts the certificate: a browser shows a warning once, and then the page."
    : "If the program shows nothing, the certificate is not trusted: npm run certs.",
);
