/**
 * Workbooks in IndexedDB. What is known of one lies beside its bytes, so that a list need not read them;
 * both are put down in one transaction, so that there is never one without the other.
 */
import { createStore, promisifyRequest, type UseStore } from "idb-keyval";
import { draftsOfFile } from "./drafts-of";
import { entriesFrom, type Entry, entryFrom, type Kept, surplus } from "./entry";
import { ownName } from "./own-name";

const entryKey = (id: string): string => `entry/${id}`;
const bytesKey = (id: string): string => `bytes/${id}`;
/** Whose drafts belong to a file of this name, where its name does not say so. */
const draftsKey = (name: string): string => `drafts/${ownName(name)}`;
/** Which of them is open, or was when the page was left; "" for none. */
const openKey = "open";

const entryKeys = (): IDBKeyRange => IDBKeyRange.bound("entry/", "entry/\uffff");

function remove(objects: IDBObjectStore, id: string): void {
  objects.delete(entryKey(id));
  objects.delete(bytesKey(id));
}

/** It outlives the entry: the file may be opened again long after. */
function noteDrafts(objects: IDBObjectStore, { name, drafts, isInFile, isSample }: Entry): void {
  if (!isInFile || isSample) return;
  if (drafts === draftsOfFile(name)) objects.delete(draftsKey(name));
  else objects.put(drafts, draftsKey(name));
}

/** Each may fail, by a rejected promise: a full disk, a browser that keeps nothing. */
export class KeptWorkbooks {
  private made: UseStore | undefined;

  /** Not before it is asked for: a browser may have no such thing. */
  private get store(): UseStore {
    return (this.made ??= createStore("titrebook-workbooks", "workbooks"));
  }

  async put(entry: Entry, bytes: Uint8Array): Promise<void> {
    await this.store("readwrite", (objects) => {
      try {
        objects.put(entry, entryKey(entry.id));
        objects.put(bytes, bytesKey(entry.id));
        objects.put(entry.id, openKey);
        noteDrafts(objects, entry);
      } catch (thrown) {
        objects.transaction.abort();
        throw thrown;
      }
      const all = objects.getAll(entryKeys());
      all.onsuccess = () => {
        for (const { id } of surplus(entriesFrom(all.result), entry.id)) remove(objects, id);
      };
      return promisifyRequest(objects.transaction);
    });
  }

  /** Latest first. */
  async all(): Promise<Entry[]> {
    return entriesFrom(
      await this.store("readonly", (objects) => promisifyRequest(objects.getAll(entryKeys()))),
    );
  }

  async entry(id: string): Promise<Entry | undefined> {
    return entryFrom(
      await this.store("readonly", (objects) => promisifyRequest(objects.get(entryKey(id)))),
    );
  }

  /** Undefined where there is none, or half of one. */
  async get(id: string): Promise<Kept | undefined> {
    const [entry, bytes] = await this.store("readonly", (objects) =>
      Promise.all([
        promisifyRequest<unknown>(objects.get(entryKey(id))),
        promisifyRequest<unknown>(objects.get(bytesKey(id))),
      ]),
    );
    const known = entryFrom(entry);
    return known && bytes instanceof Uint8Array && bytes.length === known.size
      ? { entry: known, bytes }
      : undefined;
  }

  /** Undefined where the name of the file says it. */
  async draftsOf(name: string): Promise<string | undefined> {
    const drafts = await this.store("readonly", (objects) =>
      promisifyRequest<unknown>(objects.get(draftsKey(name))),
    );
    return typeof drafts === "string" ? drafts : undefined;
  }

  /** Which was open last; "" where that was none. */
  async open(): Promise<string> {
    const id = await this.store("readonly", (objects) =>
      promisifyRequest<unknown>(objects.get(openKey)),
    );
    return typeof id === "string" ? id : "";
  }

  async setOpen(id: string): Promise<void> {
    await this.store("readwrite", (objects) => {
      objects.put(id, openKey);
      return promisifyRequest(objects.transaction);
    });
  }

  async forget(id: string): Promise<void> {
    await this.store("readwrite", (objects) => {
      remove(objects, id);
      return promisifyRequest(objects.transaction);
    });
  }
}
