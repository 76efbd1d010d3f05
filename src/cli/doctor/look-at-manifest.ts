/** A manifest against the maker's rules, without the network. */
import { existsSync, readFileSync } from "node:fs";
import { parseManifest } from "../manifest/parse";
import { manifestFaults } from "../manifest/rules";
import { type Finding, mend, well } from "./finding";

export function lookAtManifest(path: string): Finding {
  const about = "manifest";
  if (!existsSync(path)) return mend(about, `${path} is missing: git checkout manifest.xml.`);
  try {
    const faults = manifestFaults(parseManifest(readFileSync(path, "utf8")));
    if (faults.length === 0) return well(about, "Keeps every rule that is known here.");
    const more = faults.length > 1 ? ` And ${faults.length - 1} more.` : "";
    return mend(about, `${faults[0] ?? ""}: put it right in manifest.xml.${more}`);
  } catch (fault) {
    return mend(about, `It is no well-formed XML: ${(fault as Error).message.trim()}.`);
  }
}
