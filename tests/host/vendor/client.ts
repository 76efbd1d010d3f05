/**
 * The spreadsheet program's own client, as its maker publishes it, loaded without a program behind it: it
 * knows its members and since which ExcelApi each is there, and builds each request as it would be sent.
 * Nothing of it is handed on: it is loaded from where npm put it.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { createContext, runInContext } from "node:vm";
import { root } from "../../rules/sources-of";

const from = join(root, "node_modules/@microsoft/office-js/dist");
const files = ["office.debug.js", "excel-win32-16.01.debug.js"];

/** As the client wants to be answered. */
export interface Answer {
  readonly HttpStatusCode: number;
  readonly Headers: object;
  readonly Body?: object;
  readonly ErrorCode?: string;
}

/** One request of the client. */
export interface Request {
  readonly Body: {
    readonly Actions: readonly Action[];
    readonly ObjectPaths: Readonly<Record<string, ObjectPath>>;
  };
}

export interface Action {
  readonly Id: number;
  /** 1 makes an object, 2 loads, 3 calls, 4 sets. */
  readonly ActionType: number;
  readonly Name: string;
  readonly ObjectPathId: number;
  readonly QueryInfo?: { readonly Select?: readonly string[] };
}

export interface ObjectPath {
  readonly Name: string;
  readonly ParentObjectPathId?: number;
  readonly ArgumentInfo?: { readonly Arguments?: readonly unknown[] };
}

interface Client {
  Excel: { RequestContext: new (url: string) => Context };
  Office: object;
  OfficeExtension: { Utility: { _doApiNotSupportedCheck: boolean } };
}

interface Context {
  sync(): Promise<void>;
  _requestExecutor: {
    executeAsync(data: unknown, flags: number, request: Request): Promise<Answer>;
  };
}

const element = () => ({
  setAttribute: () => undefined,
  getAttribute: () => null,
  appendChild: () => undefined,
  style: {},
  src: "https://appsforoffice.microsoft.com/lib/1/hosted/office.js",
});

const href = "https://x/taskpane.html?_host_Info=Excel$Win32$16.01$en-US$$$$0";

/** As much of a browser as the client looks at while it loads; what it puts off is never done. */
function browser(): object {
  const nothing = () => undefined;
  const store = { getItem: () => null, setItem: nothing, removeItem: nothing };
  const timers = { setTimeout: () => 0, clearTimeout: nothing, setInterval: () => 0 };
  const page: Record<string, unknown> = {
    console: { log: nothing, warn: nothing, error: nothing },
    ...timers,
    clearInterval: nothing,
    Promise,
    performance,
    navigator: { userAgent: "Mozilla/5.0 Edg/120", platform: "Win32", language: "en-US" },
    document: {
      createElement: element,
      getElementsByTagName: () => [element()],
      getElementById: () => null,
      addEventListener: nothing,
      attachEvent: nothing,
      location: { href },
      readyState: "complete",
      cookie: "",
      URL: href,
      body: element(),
      head: element(),
    },
    location: {
      href,
      search: href.slice(href.indexOf("?")),
      hash: "",
      protocol: "https:",
      host: "x",
      hostname: "x",
      pathname: "/taskpane.html",
    },
    history: { replaceState: nothing, pushState: nothing },
    addEventListener: nothing,
    removeEventListener: nothing,
    sessionStorage: store,
    localStorage: store,
    XMLHttpRequest: nothing,
  };
  Object.assign(page, { window: page, self: page, globalThis: page });
  return createContext(page);
}

function loaded(): Client {
  const page = browser();
  for (const file of files) {
    runInContext(readFileSync(join(from, file), "utf8"), page, { filename: file });
  }
  return page as unknown as Client;
}

/**
 * Puts the client where the host looks for it.
 * @param newest the newest ExcelApi it may use, behind its 1 and the point
 */
export function installClient(
  newest: number,
  answering: (request: Request, bytes: number) => Answer,
): void {
  const client = loaded();
  client.OfficeExtension.Utility._doApiNotSupportedCheck = true;
  const requirements = {
    isSetSupported: (set: string, version = "1.1") =>
      set !== "ExcelApi" || Number(version.split(".")[1]) <= newest,
  };
  client.Office = {
    HostType: { Excel: "Excel" },
    PlatformType: { Mac: "Mac" },
    context: { requirements, platform: "OfficeOnline" },
  };
  const run = <T>(_: object, work: (context: Context) => Promise<T>): Promise<T> => {
    const context = new client.Excel.RequestContext("http://x/");
    context._requestExecutor = {
      executeAsync: (_data, _flags, request) =>
        Promise.resolve(answering(request, Buffer.byteLength(JSON.stringify(request.Body)))),
    };
    return work(context);
  };
  const Excel: object = new Proxy(client.Excel, {
    get: (excel, name) => (name === "run" ? run : Reflect.get(excel, name)),
  });
  Object.assign(globalThis, { Excel, Office: client.Office });
}
