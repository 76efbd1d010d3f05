/**
 * `npm run certs`: certificates for https on this machine, in .certs/, and trust where the system has a
 * way. `--anew` makes new ones, `--no-trust` only makes them, `--forget` takes trust and files away.
 */
import { spawnSync } from "node:child_process";
import { existsSync, rmSync } from "node:fs";
import { certificateFiles, certificateFolder } from "./certs/folder";
import { makeCertificates } from "./certs/make";
import { certificateState, saidOf } from "./certs/state";
import { asTyped, byHand, type TrustCommand, trustOn } from "./certs/trust";

const files = certificateFiles(certificateFolder);
const asked = new Set(process.argv.slice(2));

const known = ["--anew", "--no-trust", "--forget"];
const unknown = [...asked].find((each) => !known.includes(each));
if (unknown !== undefined) {
  console.error(`${unknown} is not known here: --anew, --no-trust or --forget.`);
  process.exit(1);
}

/** Runs a command of the system; says how to do it by hand when it does not succeed. */
function ask(command: TrustCommand): boolean {
  const { status } = spawnSync(command.program, command.arguments, { stdio: "inherit" });
  if (status === 0) return true;
  console.error(`That did not succeed. By hand, in a terminal of your own:\n  ${asTyped(command)}`);
  return false;
}

/** Takes trust away from the authority that stands there; true when there is none left to take. */
function distrust(): boolean {
  if (!existsSync(files.authority)) return true;
  const trust = trustOn(process.platform, files.authority);
  return !trust || ask(trust.forget);
}

function forget(): void {
  // The file is needed to forget it by: it stays where that failed.
  if (!distrust()) process.exit(1);
  rmSync(certificateFolder, { recursive: true, force: true });
  console.log("The certificates are gone, and nothing here trusts them any more.");
}

async function make(): Promise<void> {
  const found = certificateState(files, new Date());
  if (found.state !== "good" || asked.has("--anew")) {
    if (found.state !== "missing" && found.state !== "unreadable") distrust();
    await makeCertificates(files);
  }
  console.log(saidOf(certificateState(files, new Date())));
  console.log(`It stands in ${certificateFolder}, which git ignores.`);
  if (asked.has("--no-trust")) return;
  const trust = trustOn(process.platform, files.authority);
  if (!trust) {
    console.log(byHand(files.authority));
    return;
  }
  console.log(trust.asks);
  if (!ask(trust.trust)) process.exit(1);
  console.log("Trusted, for your account alone. To take it back: npm run certs -- --forget");
}

if (asked.has("--forget")) forget();
else await make();
