/** Serves the files of one folder, and nothing outside it, to this machine only. */
import { createReadStream, statSync } from "node:fs";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import { basename, extname, join, normalize, resolve, sep } from "node:path";

/** Only this machine is answered. */
export const host = "127.0.0.1";

/** What a page cannot say of itself: that a stranger's page may not put it into a frame. */
const unframed = "frame-ancestors 'none'";

/** On the web the pane stands in a frame of the spreadsheet program. */
const mayBeFramed = (file: string): boolean => basename(file) === "taskpane.html";

const types: Record<string, string> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".xml": "application/xml; charset=utf-8",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".ico": "image/x-icon",
  ".woff2": "font/woff2",
  ".xlsx": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
};

/** The path a request asks for, decoded; undefined when it makes no sense. */
function requested(url: string): string | undefined {
  try {
    const path = decodeURIComponent(new URL(url, `http://${host}`).pathname);
    return path.includes("\0") ? undefined : path;
  } catch {
    return undefined;
  }
}

const isFile = (path: string): boolean =>
  statSync(path, { throwIfNoEntry: false })?.isFile() === true;

/**
 * The file a request is for, inside the folder; undefined when there is none.
 * @example fileFor("/srv/dist", "/") // "/srv/dist/index.html", if it is there
 */
function fileFor(folder: string, url: string): string | undefined {
  const path = requested(url);
  if (path === undefined) return undefined;
  const root = resolve(folder);
  const file = join(root, normalize(path.endsWith("/") ? `${path}index.html` : path));
  return file.startsWith(root + sep) && isFile(file) ? file : undefined;
}

function answer(folder: string, request: IncomingMessage, response: ServerResponse): void {
  if (request.method !== "GET" && request.method !== "HEAD") {
    response.writeHead(405, { Allow: "GET, HEAD" }).end();
    return;
  }
  const file = fileFor(folder, request.url ?? "/");
  if (file === undefined) {
    response.writeHead(404, { "Content-Type": "text/plain; charset=utf-8" }).end("Not found\n");
    return;
  }
  response.writeHead(200, {
    "Content-Type": types[extname(file).toLowerCase()] ?? "application/octet-stream",
    "Content-Length": statSync(file).size,
    // A new build must not be hidden by an old one.
    "Cache-Control": "no-cache",
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
    ...(mayBeFramed(file) ? {} : { "Content-Security-Policy": unframed }),
  });
  if (request.method === "HEAD") response.end();
  else createReadStream(file).pipe(response);
}

/** Resolves when the server listens; rejects when the port cannot be had. Port 0 takes any free one. */
export function serveFolder(folder: string, port: number): Promise<Server> {
  const server = createServer((request, response) => answer(folder, request, response));
  return new Promise((listening, failed) => {
    server.once("error", failed);
    server.listen(port, host, () => listening(server));
  });
}
