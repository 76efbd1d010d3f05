import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { request, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { portFrom } from "../../src/cli/port-wanted";
import { host, serveFolder } from "../../src/cli/static-server";

let folder: string;
let server: Server;
const port = () => (server.address() as AddressInfo).port;

beforeAll(async () => {
  const parent = mkdtempSync(join(tmpdir(), "titrebook-"));
  folder = join(parent, "dist");
  mkdirSync(join(folder, "help"), { recursive: true });
  writeFileSync(join(folder, "index.html"), "<p>start</p>");
  writeFileSync(join(folder, "help", "dose.html"), "<p>dose</p>");
  writeFileSync(join(folder, "functions.json"), "{}");
  writeFileSync(join(folder, "taskpane.html"), "<p>pane</p>");
  writeFileSync(join(parent, "secret.txt"), "secret");
  writeFileSync(`${folder}-beside.txt`, "secret");
  server = await serveFolder(folder, 0);
});
afterAll(() => {
  server.close();
  rmSync(join(folder, ".."), { recursive: true });
});

/** Asks for a path exactly as written: a browser would tidy it up first. */
const ask = (path: string, method = "GET") =>
  new Promise<{ status: number | undefined; type: string | undefined; body: string }>(
    (answered, failed) => {
      request({ host, port: port(), path, method }, (response) => {
        let body = "";
        response.on("data", (part: Buffer) => (body += part.toString()));
        response.on("end", () =>
          answered({
            status: response.statusCode,
            type: response.headers["content-type"],
            body,
          }),
        );
      })
        .on("error", failed)
        .end();
    },
  );

describe("the server of npm start", () => {
  it("answers the folder itself with its start page", async () =>
    expect(await ask("/")).toEqual({
      status: 200,
      type: "text/html; charset=utf-8",
      body: "<p>start</p>",
    }));

  it("answers files in folders, with queries and by kind", async () => {
    expect(await ask("/help/dose.html?from=pane")).toMatchObject({ status: 200 });
    expect(await ask("/functions.json")).toMatchObject({ type: /^application\/json/ });
    expect(await ask("/help/dose.html", "HEAD")).toMatchObject({ status: 200, body: "" });
  });

  it.each([
    "/../secret.txt",
    "/%2e%2e/secret.txt",
    "/help/..%2f..%2fsecret.txt",
    "/..%5csecret.txt",
    "/../dist-beside.txt",
    "//etc/passwd",
    "/%00",
    "/%E0%A4%A",
    "/help",
    "/nothing.html",
  ])("finds nothing at %s", async (path) =>
    expect(await ask(path)).toMatchObject({ status: 404, body: "Not found\n" }),
  );

  it("lets nobody put its pages into a frame, but for the pane, and tells nobody their address", async () => {
    const headers = async (path: string) =>
      (await fetch(`http://${host}:${port()}${path}`)).headers;
    const policy = "content-security-policy";
    expect((await headers("/")).get(policy)).toBe("frame-ancestors 'none'");
    expect((await headers("/help/dose.html")).get(policy)).toBe("frame-ancestors 'none'");
    const pane = await headers("/taskpane.html");
    expect(pane.get(policy)).toBeNull();
    expect(pane.get("referrer-policy")).toBe("no-referrer");
    expect(pane.get("x-content-type-options")).toBe("nosniff");
  });

  it("takes no other method", async () =>
    expect(await ask("/index.html", "POST")).toMatchObject({ status: 405 }));

  it("listens on this machine only", () =>
    expect((server.address() as AddressInfo).address).toBe("127.0.0.1"));
});

const start = (wanted: string) =>
  spawnSync(process.execPath, ["--import", "tsx", "src/cli/start.ts"], {
    cwd: fileURLToPath(new URL("../..", import.meta.url)),
    env: { ...process.env, PORT: wanted },
    encoding: "utf8",
    // The server under test runs in this process, which stands still meanwhile: it is never asked.
    timeout: 30_000,
  });

describe("npm start", () => {
  it("says in one sentence that the port is taken, and ends with 1", () => {
    const { status, stderr, stdout } = start(String(port()));
    expect(status).toBe(1);
    expect(stdout).toBe("");
    expect(stderr.trim()).toBe(
      `Port ${port()} is taken by another program: stop it, or choose another port with PORT=3000 npm start.`,
    );
  });

  it.each(["abc", "0", "65536", "-1", "80.5", ""])("refuses the port %s in words", (wanted) => {
    expect(portFrom(wanted)).toContain(`PORT is "${wanted}"`);
  });

  it.each([1, 3000, 65_535])("takes the port %i", (wanted) => {
    expect(portFrom(String(wanted))).toBe(wanted);
  });

  it("ends with 1 and the sentence for a port that is none", () => {
    const { status, stderr } = start("65536");
    expect(status).toBe(1);
    expect(stderr).toContain(String(portFrom("65536")));
  });
});
