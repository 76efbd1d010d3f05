/**
 * `npm run check`: types, lint, format and the unit suite, side by side; what each has to say is
 * printed as it ends. `-- --still` leaves out the suite, and looks only at the text of the project.
 */
import { spawn } from "node:child_process";

const still = [
  "tsc --noEmit --incremental --tsBuildInfoFile .cache/types",
  "eslint --cache --cache-location .cache/lint .",
  "prettier --check --log-level warn --cache --cache-location .cache/format .",
];
const suite = "vitest run --project unit*";

/** The words of one program and how it ended. The package's own programs come first. */
function ended(command: string): Promise<{ code: number | null; said: string }> {
  const [program = "", ...given] = command.split(" ");
  const run = spawn("npx", ["--no-install", program, ...given], { stdio: "pipe" });
  let said = "";
  const listen = (part: Buffer): void => {
    said += part.toString();
  };
  run.stdout.on("data", listen);
  run.stderr.on("data", listen);
  return new Promise((done) => {
    run.on("close", (code) => done({ code, said }));
  });
}

const commands = process.argv.includes("--still") ? still : [...still, suite];
await Promise.all(
  commands.map(async (command) => {
    const { code, said } = await ended(command);
    if (code !== 0) process.exitCode = 1;
    console.log(`${said}${code === 0 ? "well" : "FAILED"}: ${command}`);
  }),
);
