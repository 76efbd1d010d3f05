/** `npm run doctor`: looks at everything the add-in needs on this machine, and says what to mend. */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { certificateFiles, certificateFolder } from "./certs/folder";
import { report } from "./doctor/finding";
import { lookAtBuild } from "./doctor/look-at-build";
import { lookAtCertificates } from "./doctor/look-at-certificates";
import { lookAtManifest } from "./doctor/look-at-manifest";
import { lookAtNode, lookAtPackages } from "./doctor/look-at-node";
import { lookAtPort, wantedPorts } from "./doctor/look-at-ports";
import { isOurs } from "./doctor/ours";

const project = fileURLToPath(new URL("../../", import.meta.url));
const { engines } = JSON.parse(readFileSync(`${project}package.json`, "utf8")) as {
  engines: { node: string };
};

const findings = [
  lookAtNode(process.version, engines.node.replace(/^>=/, "")),
  lookAtPackages(project),
  lookAtCertificates(certificateFiles(certificateFolder), new Date()),
  ...(await Promise.all(wantedPorts.map((wanted) => lookAtPort(wanted, isOurs)))),
  lookAtManifest(`${project}manifest.xml`),
  lookAtBuild(`${project}dist`, `${project}src`),
];
console.log(report(findings));
process.exitCode = findings.some(({ state }) => state === "mend") ? 1 : 0;
