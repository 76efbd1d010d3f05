import { execFileSync } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { createServer, get } from "node:https";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { certificateFiles } from "../../src/cli/certs/folder";
import { makeCertificates } from "../../src/cli/certs/make";
import { certificateState, saidOf } from "../../src/cli/certs/state";
import { asTyped, byHand, trustOn } from "../../src/cli/certs/trust";

const made = mkdtempSync(join(tmpdir(), "titrebook-certs-"));
const other = mkdtempSync(join(tmpdir(), "titrebook-certs-"));
const tried = mkdtempSync(join(tmpdir(), "titrebook-certs-"));
const files = certificateFiles(tried);
const now = new Date();

beforeAll(async () => {
  await makeCertificates(certificateFiles(made));
  await makeCertificates(certificateFiles(other));
});
beforeEach(() => {
  cpSync(made, tried, { recursive: true });
});
afterAll(() => {
  for (const folder of [made, other, tried]) rmSync(folder, { recursive: true });
});

const state = (at = now) => certificateState(files, at).state;

describe("npm run certs", () => {
  it("makes certificates that are good for about a year", () => {
    const found = certificateState(files, now);
    if (found.state !== "good") throw new Error(saidOf(found));
    const days = (found.until.getTime() - now.getTime()) / 86_400_000;
    expect(days).toBeGreaterThan(360);
    expect(days).toBeLessThan(370);
  });

  it("keeps the key to its owner, and the authority's key nowhere", () => {
    if (process.platform !== "win32") expect(statSync(files.key).mode & 0o077).toBe(0);
    expect(readFileSync(files.authority, "utf8")).not.toContain("PRIVATE KEY");
  });

  it("makes a chain that openssl accepts and https on localhost serves", async () => {
    const verified = execFileSync("openssl", [
      "verify",
      "-CAfile",
      files.authority,
      files.certificate,
    ]);
    expect(String(verified)).toContain("OK");
    const server = createServer(
      { cert: readFileSync(files.certificate), key: readFileSync(files.key) },
      (_, response) => response.end("served"),
    );
    await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
    const { port } = server.address() as AddressInfo;
    const ask = (ca?: Buffer) =>
      new Promise<string>((resolve) => {
        get(
          { host: "localhost", family: 4, port, agent: false, ...(ca ? { ca } : {}) },
          (response) => response.on("data", (data) => resolve(String(data))),
        ).on("error", (error: NodeJS.ErrnoException) => resolve(error.code ?? "failed"));
      });
    expect(await ask(readFileSync(files.authority))).toBe("served");
    expect(await ask()).toBe("UNABLE_TO_VERIFY_LEAF_SIGNATURE");
    await new Promise((closed) => server.close(closed));
  });

  it("tells a missing file, an unreadable one, another's key, another's authority and an old one apart", () => {
    expect(state(new Date(now.getTime() + 400 * 86_400_000))).toBe("expired");
    cpSync(certificateFiles(other).authority, files.authority);
    expect(state()).toBe("not-signed");
    cpSync(certificateFiles(other).key, files.key);
    expect(state()).toBe("not-a-pair");
    writeFileSync(files.key, "nothing of the kind");
    expect(state()).toBe("unreadable");
    rmSync(files.certificate);
    expect(state()).toBe("missing");
  });

  it("says with each fault which command mends it", () => {
    for (const found of [
      { state: "missing", file: "a" },
      { state: "unreadable", file: "a" },
      { state: "not-a-pair" },
      { state: "not-for-localhost" },
      { state: "not-signed" },
      { state: "expired", on: now },
    ] as const) {
      expect(saidOf(found)).toMatch(/run npm run certs( -- --anew)?\.$/);
    }
  });

  it("trusts and forgets for the user alone on Windows and on the Mac", () => {
    const windows = trustOn("win32", files.authority);
    expect(asTyped(windows?.trust ?? { program: "", arguments: [] })).toBe(
      `certutil -user -addstore Root ${files.authority}`,
    );
    expect(windows?.forget.arguments.at(-1)).toMatch(/^[0-9A-F]{40}$/);
    const mac = trustOn("darwin", files.authority);
    expect(mac?.trust.program).toBe("security");
    expect(mac?.trust.arguments).not.toContain("-d");
    expect(mac?.forget.arguments).toEqual(["remove-trusted-cert", files.authority]);
  });

  it("says plainly where a system has nobody to trust for", () => {
    expect(trustOn("linux", files.authority)).toBeUndefined();
    expect(byHand(files.authority)).toContain("nothing was added");
    expect(byHand(files.authority)).toContain(files.authority);
  });
});
