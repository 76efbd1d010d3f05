import { mkdirSync, mkdtempSync, readFileSync, rmSync, utimesSync, writeFileSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeEach, describe, expect, it } from "vitest";
import { checksumList } from "../../src/cli/build/checksums";
import { certificateFiles } from "../../src/cli/certs/folder";
import { makeCertificates } from "../../src/cli/certs/make";
import { mend, mind, report, well } from "../../src/cli/doctor/finding";
import { lookAtBuild } from "../../src/cli/doctor/look-at-build";
import { lookAtCertificates } from "../../src/cli/doctor/look-at-certificates";
import { lookAtManifest } from "../../src/cli/doctor/look-at-manifest";
import { lookAtNode, lookAtPackages } from "../../src/cli/doctor/look-at-node";
import { lookAtPort } from "../../src/cli/doctor/look-at-ports";
import { isOurs } from "../../src/cli/doctor/ours";
import { root } from "../rules/sources-of";

const folder = mkdtempSync(join(tmpdir(), "titrebook-doctor-"));
const dist = join(folder, "dist");
const sources = join(folder, "src");
const manifest = join(folder, "manifest.xml");
const day = 86_400_000;

function makeBuild(): void {
  const files = new Map([
    ["functions.js", Buffer.from("1+1")],
    ["index.html", Buffer.from("<p>")],
  ]);
  mkdirSync(dist, { recursive: true });
  mkdirSync(sources, { recursive: true });
  for (const [name, content] of files) writeFileSync(join(dist, name), content);
  writeFileSync(join(sources, "one.ts"), "1");
  utimesSync(join(sources, "one.ts"), new Date(0), new Date(0));
  writeFileSync(join(dist, "checksums.txt"), checksumList(files));
}

beforeEach(() => {
  rmSync(folder, { recursive: true, force: true });
  makeBuild();
  writeFileSync(manifest, readFileSync(join(root, "manifest.xml"), "utf8"));
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

describe("the doctor looks at Node and packages", () => {
  it.each([
    ["v18.20.1", "mend", /nodejs\.org/],
    ["v20.9.0", "mend", /older than 20\.11/],
    ["v20.11.0", "well", /will do/],
    ["v22.3.0", "well", /will do/],
    ["v25.0.0", "mind", /tried with 20 and 22/],
  ])("%s: %s", (version, state, says) => {
    expect(lookAtNode(version, "20.11")).toEqual({
      about: "Node",
      state,
      says: expect.stringMatching(says),
    });
  });

  it("finds the packages of this checkout installed, and misses those of a bare one", () => {
    expect(lookAtPackages(root).state).toBe("well");
    writeFileSync(
      join(folder, "package.json"),
      JSON.stringify({
        dependencies: { a: "1.0.0", b: "1.0.0", c: "1.0.0" },
        devDependencies: { d: "2.0.0" },
      }),
    );
    const packages = { "node_modules/d": { version: "2.0.0" } };
    writeFileSync(join(folder, "package-lock.json"), JSON.stringify({ packages }));
    expect(lookAtPackages(folder)).toEqual(
      mend("packages", "a, b, c and 1 more: missing or of another version. Run npm ci."),
    );
  });

  it("misses a package of another version than the lock's", () => {
    const installed = join(folder, "node_modules/a");
    mkdirSync(installed, { recursive: true });
    writeFileSync(join(installed, "package.json"), '{"version":"1.0.1"}');
    writeFileSync(join(folder, "package.json"), '{"dependencies":{"a":"1.0.0"}}');
    writeFileSync(
      join(folder, "package-lock.json"),
      '{"packages":{"node_modules/a":{"version":"1.0.0"}}}',
    );
    expect(lookAtPackages(folder).says).toMatch(/^a: missing or of another version/);
  });
});

describe("the doctor looks at certificates", () => {
  const files = certificateFiles(join(folder, "certs"));

  it("that are not there", () => {
    expect(lookAtCertificates(files, new Date())).toMatchObject({
      state: "mend",
      says: expect.stringMatching(/run npm run certs\.$/),
    });
  });

  it("that are good, run out soon, have run out, or are spoilt", async () => {
    await makeCertificates(files);
    const now = Date.now();
    expect(lookAtCertificates(files, new Date(now)).state).toBe("well");
    expect(lookAtCertificates(files, new Date(now + 350 * day)).state).toBe("mind");
    expect(lookAtCertificates(files, new Date(now + 370 * day))).toMatchObject({
      state: "mend",
      says: expect.stringContaining("--anew"),
    });
    writeFileSync(files.key, "spoilt");
    expect(lookAtCertificates(files, new Date(now))).toMatchObject({
      state: "mend",
      says: expect.stringContaining("--anew"),
    });
  });
});

describe("the doctor looks at ports", () => {
  async function serving<T>(body: string, work: (port: number) => Promise<T>): Promise<T> {
    const server = createServer((_, response) => response.end(body));
    await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
    try {
      return await work((server.address() as AddressInfo).port);
    } finally {
      await new Promise((closed) => server.close(closed));
    }
  }

  it("a free one", async () => {
    const port = await serving("", async (taken) => taken);
    expect(await lookAtPort({ port, command: "npm start" }, isOurs)).toEqual(
      well(`port ${port}`, "Free for npm start."),
    );
  });

  it("one that another program has: it says how to take another", async () => {
    await serving("<title>Something</title>", async (port) => {
      const { state, says } = await lookAtPort({ port, command: "npm start" }, isOurs);
      expect(state).toBe("mend");
      expect(says).toContain(`PORT=${port + 100} npm start`);
    });
  });

  it("one where Titrebook is served already", async () => {
    await serving("<head><title>Titrebook: logbook</title>", async (port) => {
      expect((await lookAtPort({ port, command: "npm start" }, isOurs)).state).toBe("mind");
    });
  });
});

describe("the doctor looks at the manifest", () => {
  const says = (change: (text: string) => string) => {
    writeFileSync(manifest, change(readFileSync(manifest, "utf8")));
    return lookAtManifest(manifest);
  };

  it("that keeps the rules, is missing, is no XML, or breaks a rule", () => {
    expect(lookAtManifest(manifest).state).toBe("well");
    expect(says((text) => text.replace('size="80"', 'size="64"'))).toMatchObject({
      state: "mend",
      says: expect.stringMatching(/Icon \(line \d+\) lacks 80 pixels/),
    });
    expect(says((text) => text.replace("</OfficeApp>", ""))).toMatchObject({
      state: "mend",
      says: expect.stringMatching(/no well-formed XML/),
    });
    rmSync(manifest);
    expect(lookAtManifest(manifest)).toMatchObject({
      state: "mend",
      says: expect.stringContaining("is missing"),
    });
  });
});

describe("the doctor looks at the build", () => {
  const found = () => lookAtBuild(dist, sources);

  it("that is whole", () => {
    expect(found()).toEqual(well("build", "2 files, each as its sum says."));
  });

  it("that lacks a file", () => {
    rmSync(join(dist, "functions.js"));
    expect(found()).toEqual(mend("build", "functions.js missing: run npm run build."));
  });

  it("of which a file was changed", () => {
    writeFileSync(join(dist, "index.html"), "<p>changed");
    expect(found()).toEqual(mend("build", "index.html changed since: run npm run build."));
  });

  it("that is older than the sources", () => {
    const later = new Date(Date.now() + 5000);
    utimesSync(join(sources, "one.ts"), later, later);
    expect(found()).toMatchObject({ state: "mind", says: expect.stringContaining("older") });
  });

  it("that is not there, or lists nothing", () => {
    writeFileSync(join(dist, "checksums.txt"), "");
    expect(found().says).toContain("lists nothing");
    rmSync(dist, { recursive: true });
    expect(found().says).toContain("There is none");
  });
});

describe("the doctor's report", () => {
  it("names each thing, and counts what is to be mended", () => {
    expect(report([well("Node", "Fine."), mind("port", "Ours."), mend("build", "None.")])).toBe(
      "well  Node   Fine.\nmind  port   Ours.\nMEND  build  None.\nOne thing to mend, marked MEND.",
    );
    expect(report([well("Node", "Fine.")])).toMatch(/Nothing to mend\.$/);
  });
});
