/** `npm start`: serves the built workbench on this machine; builds it first only when there is none. */
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { portFrom } from "./port-wanted";
import { host, serveFolder } from "./static-server";

const project = fileURLToPath(new URL("../../", import.meta.url));
const dist = fileURLToPath(new URL("../../dist/", import.meta.url));

/** Says one sentence and ends the command. */
function stop(sentence: string): never {
  console.error(sentence);
  process.exit(1);
}

function portWanted(): number {
  const port = portFrom(process.env.PORT ?? "3000");
  return typeof port === "number" ? port : stop(port);
}

function buildWhenMissing(): void {
  if (existsSync(`${dist}index.html`)) return;
  console.log("Building the workbench, once. This takes less than a minute.");
  const { status } = spawnSync("npm", ["run", "build", "--silent"], {
    cwd: project,
    stdio: "inherit",
    shell: process.platform === "win32",
  });
  if (status !== 0) stop("The build failed: see above.");
}

const problems: Record<string, (port: number) => string> = {
  EADDRINUSE: (port) =>
    `Port ${port} is taken by another program: stop it, or choose another port with PORT=${port === 3000 ? 3100 : 3000} npm start.`,
  EACCES: (port) =>
    `Port ${port} may not be used by this account: choose one above 1023 with PORT.`,
};

const port = portWanted();
try {
  // The port first: there is no sense in building for a port that cannot be had.
  await serveFolder(dist, port);
} catch (error) {
  const code = (error as NodeJS.ErrnoException).code ?? "";
  stop(problems[code]?.(port) ?? `The page cannot be served: ${String(error)}`);
}
buildWhenMissing();
console.log(`Titrebook is at http://${host}:${port} (Ctrl+C ends it).`);
