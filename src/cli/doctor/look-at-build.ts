/** What was built: there, whole, and not older than the sources. */
import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { checksumOf, readChecksums } from "../build/checksums";
import { type Finding, mend, mind, well } from "./finding";

const again = "run npm run build";
const named = (names: readonly string[]): string =>
  names.slice(0, 3).join(", ") + (names.length > 3 ? ` and ${names.length - 3} more` : "");

const newestIn = (folder: string): number =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .reduce((latest, entry) => {
      const { mtimeMs } = statSync(join(entry.parentPath, entry.name));
      return Math.max(latest, mtimeMs);
    }, 0);

export function lookAtBuild(dist: string, sources: string): Finding {
  const about = "build";
  const list = join(dist, "checksums.txt");
  if (!existsSync(list)) return mend(about, `There is none in ${dist}: ${again}.`);
  const sums = readChecksums(readFileSync(list, "utf8"));
  if (sums.length === 0) return mend(about, `${list} lists nothing: ${again}.`);
  const missing = sums.filter(({ name }) => !existsSync(join(dist, name))).map(({ name }) => name);
  if (missing.length > 0) return mend(about, `${named(missing)} missing: ${again}.`);
  const changed = sums
    .filter(({ name, sum }) => checksumOf(readFileSync(join(dist, name))) !== sum)
    .map(({ name }) => name);
  if (changed.length > 0) return mend(about, `${named(changed)} changed since: ${again}.`);
  return newestIn(sources) > statSync(list).mtimeMs
    ? mind(about, `Whole, but older than the sources: ${again} to see what you changed.`)
    : well(about, `${sums.length} files, each as its sum says.`);
}
