/** The Node that runs this, and what is installed. */
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type Finding, mend, mind, well } from "./finding";

const parts = (version: string): number[] => version.replace(/^v/, "").split(".").map(Number);

const isBefore = (version: string, least: string): boolean => {
  const [a, b] = [parts(version), parts(least)];
  for (const place of [0, 1, 2]) {
    if ((a[place] ?? 0) !== (b[place] ?? 0)) return (a[place] ?? 0) < (b[place] ?? 0);
  }
  return false;
};

/** The versions this was tried with. */
const tried = [20, 22];

/** @param least  from "engines" of package.json: "20.11" */
export function lookAtNode(version: string, least: string): Finding {
  if (isBefore(version, least)) {
    return mend(
      "Node",
      `${version} is older than ${least}: install Node 20 or 22 from nodejs.org.`,
    );
  }
  return tried.includes(parts(version)[0] ?? 0)
    ? well("Node", `${version} will do.`)
    : mind("Node", `${version} may do; tried with ${tried.join(" and ")}.`);
}

interface Lock {
  readonly packages: Readonly<Record<string, { version?: string; optional?: boolean } | undefined>>;
}

/** Packages that package.json names and that are not there in the version of the lock. */
export function lookAtPackages(project: string): Finding {
  const read = (name: string): unknown => JSON.parse(readFileSync(join(project, name), "utf8"));
  const { packages } = read("package-lock.json") as Lock;
  const { dependencies, devDependencies } = read("package.json") as Record<
    string,
    Record<string, string>
  >;
  const off = Object.keys({ ...dependencies, ...devDependencies }).filter((name) => {
    const manifest = `node_modules/${name}/package.json`;
    if (!existsSync(join(project, manifest))) return true;
    const { version } = read(manifest) as { version: string };
    return packages[`node_modules/${name}`]?.version !== version;
  });
  const shown = off.slice(0, 3).join(", ") + (off.length > 3 ? ` and ${off.length - 3} more` : "");
  return off.length > 0
    ? mend("packages", `${shown}: missing or of another version. Run npm ci.`)
    : well("packages", "Installed as the lock says.");
}
