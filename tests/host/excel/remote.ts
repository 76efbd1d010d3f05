/**
 * Objects that behave as those of the spreadsheet program do: nothing can be read that was not loaded
 * and synced, what is set waits for the sync, and a misspelt member is an error. What is asked and what
 * is answered at one sync have a size, which may not go over a limit. Everything that was asked for is
 * kept in a log.
 */
import { bytesOf, mostBytes, perCall } from "./request-size";

/** An error as the program throws it. */
export class ProgramError extends Error {
  constructor(readonly code: string) {
    super(code);
  }
}

export class Conversation {
  /** What is waiting for the next sync. */
  private waiting: (() => void)[] = [];
  readonly log: string[] = [];
  /** What our code should never have asked for. */
  readonly misuses: string[] = [];
  syncs = 0;
  /** What is asked since the last sync, and what it is answered, in bytes. */
  private asked = 0;
  private answered = 0;
  /** The largest request so far, in bytes. */
  largest = 0;

  /** Our code is wrong: the program would throw, and the test must fail. */
  misused(what: string): never {
    this.misuses.push(what);
    throw new ProgramError(what);
  }

  constructor(
    /** Called before each change to the workbook. */
    readonly changing: (what?: string) => void,
    /** Called as each sync begins and as it ends. */
    private readonly around: { readonly begins: () => void; readonly ends: () => void },
  ) {}

  later(work: () => void): void {
    this.waiting.push(work);
  }

  /** A call, with what is handed over. */
  asks(given: unknown): void {
    this.asked += perCall + bytesOf(given);
  }

  answers(given: unknown): void {
    this.answered += perCall + bytesOf(given);
  }

  /** Too much asked for is refused before anything is done; too much to answer, after all of it is. */
  readonly sync = (): Promise<void> => {
    this.syncs += 1;
    const work = this.waiting;
    this.waiting = [];
    const asked = this.asked;
    this.asked = 0;
    this.answered = 0;
    // What was done before something fails stays done.
    this.largest = Math.max(this.largest, asked);
    try {
      if (asked > mostBytes) throw new ProgramError("RequestPayloadSizeLimitExceeded");
      this.around.begins();
      for (const each of work) each();
      if (this.answered > mostBytes) throw new ProgramError("ResponsePayloadSizeLimitExceeded");
      return Promise.resolve();
    } catch (thrown) {
      return Promise.reject(thrown as Error);
    } finally {
      this.around.ends();
    }
  };
}

export interface Members {
  /** What can be loaded. */
  readonly reads?: Record<string, () => unknown>;
  /** What can be set. */
  readonly sets?: Record<string, (value: never) => void>;
  /** Calls that change something, carried out at the next sync. */
  readonly changes?: Record<string, (...given: never[]) => void>;
  /** Calls that answer with another object at once, and objects that belong to this one. */
  readonly gives?: Record<string, (...given: never[]) => unknown>;
  readonly parts?: Record<string, () => unknown>;
  /** Is it missing? Known after a sync. */
  readonly isNull?: () => boolean;
  /** What came loaded with the list it is an item of. */
  readonly loaded?: Record<string, unknown>;
}

export function remote(talk: Conversation, path: string, members: Members): object {
  const known = new Map<string, unknown>(Object.entries(members.loaded ?? {}));
  talk.asks(path);
  const { reads = {}, sets = {}, changes = {}, gives = {}, parts = {} } = members;
  if (members.isNull) {
    const isNull = members.isNull;
    talk.later(() => known.set("isNullObject", isNull()));
  }
  const load = (names: string): void => {
    for (const name of names.split(",").map((each) => each.replace(/\/.*$/, "").trim())) {
      const read = reads[name];
      if (!read) talk.misused(`nothing to load: ${path}.${name}`);
      talk.log.push(`${path} load ${name}`);
      talk.later(() => {
        if (members.isNull?.()) return;
        const found = read();
        talk.answers(found);
        known.set(name, found);
      });
    }
  };
  return new Proxy(
    {},
    {
      get(_, name) {
        if (typeof name !== "string" || name === "then") return undefined;
        if (name === "load") return load;
        if (known.has(name)) return known.get(name);
        const change = changes[name] as ((...given: unknown[]) => void) | undefined;
        if (change) {
          return (...given: unknown[]) => {
            talk.log.push(`${path}.${name}`);
            talk.asks(given);
            talk.later(() => {
              talk.changing(`${path}.${name}`);
              change(...given);
            });
          };
        }
        if (gives[name]) return gives[name];
        if (parts[name]) {
          const part = parts[name]();
          known.set(name, part);
          return part;
        }
        return talk.misused(
          name in reads || name === "isNullObject"
            ? `read before it was loaded and synced: ${path}.${name}`
            : `no such member: ${path}.${name}`,
        );
      },
      set(_, name, value) {
        const set = sets[String(name)] as ((value: unknown) => void) | undefined;
        if (!set) return talk.misused(`cannot be set: ${path}.${String(name)}`);
        talk.log.push(`${path}.${String(name)} = ${JSON.stringify(value)}`);
        talk.asks(value);
        talk.later(() => {
          talk.changing(`${path}.${String(name)}`);
          set(value);
        });
        return true;
      },
    },
  );
}
