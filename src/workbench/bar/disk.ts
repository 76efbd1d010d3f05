/**
 * Files on this machine that the browser writes into, where it does so at all. What it asks, it asks
 * right after a press only.
 */
import { refused, type Refusal } from "../../sheet/refusal";
import { type FileOnDisk, isSameStamp, stampOf } from "../keeping/file-on-disk";

type Mode = { readonly mode: "readwrite" };
type Handle = FileSystemFileHandle & {
  queryPermission?(mode: Mode): Promise<PermissionState>;
  requestPermission?(mode: Mode): Promise<PermissionState>;
};

/** What no type of TypeScript's knows yet. */
interface Pickers {
  showSaveFilePicker?(options: object): Promise<Handle>;
  showOpenFilePicker?(options: object): Promise<Handle[]>;
}

const pickers = (): Pickers => window as unknown as Pickers;

const kind = (extension: string, accept: string) => ({
  types: [{ description: "Workbook", accept: { [accept]: [extension] } }],
  id: "titrebook",
});
const plain = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
const withMacros = "application/vnd.ms-excel.sheet.macroEnabled.12";
const kindOf = (name: string) =>
  name.toLowerCase().endsWith(".xlsm") ? kind(".xlsm", withMacros) : kind(".xlsx", plain);

const isGivenUp = (thrown: unknown): boolean =>
  thrown instanceof DOMException && thrown.name === "AbortError";

export type SavePlace = FileOnDisk | "downloads";

async function mayWrite(handle: Handle): Promise<boolean> {
  const asked = { mode: "readwrite" } as const;
  const answer = await handle.requestPermission?.(asked).catch(() => "denied" as const);
  return answer === undefined || answer === "granted";
}

/**
 * Where a save goes: into the file it came from, into one that is chosen, or into the downloads.
 * Undefined when somebody thought better of it.
 */
export async function savePlace(
  name: string,
  disk: FileOnDisk | undefined,
): Promise<SavePlace | undefined> {
  if (disk) return (await mayWrite(disk.handle)) ? disk : "downloads";
  const { showSaveFilePicker } = pickers();
  if (!showSaveFilePicker) return "downloads";
  try {
    const handle = await showSaveFilePicker.call(window, { suggestedName: name, ...kindOf(name) });
    return { handle, stamp: stampOf(await handle.getFile()) };
  } catch (thrown) {
    return isGivenUp(thrown) ? undefined : "downloads";
  }
}

/** All of it or nothing: the browser puts it in place when it is complete. */
export async function writeInto(
  { handle, stamp }: FileOnDisk,
  bytes: Uint8Array,
): Promise<FileOnDisk | Refusal> {
  const { name } = handle;
  try {
    if (!isSameStamp(stampOf(await handle.getFile()), stamp)) {
      return refused(
        `Since it was opened or saved here, ${name} was changed elsewhere: it was not written over. Save again to choose another file.`,
      );
    }
    const writing = await handle.createWritable();
    await writing.write(bytes as Uint8Array<ArrayBuffer>);
    await writing.close();
    return { handle, stamp: stampOf(await handle.getFile()) };
  } catch {
    return refused(
      `The browser could not write into ${name}: it may be open elsewhere, moved, or the disk full. Save again to choose another file.`,
    );
  }
}

export interface Chosen {
  readonly file: File;
  readonly disk?: FileOnDisk;
}

/** "by list" where the browser gives files to read only. */
export async function chooseOnDisk(): Promise<Chosen | "by list" | undefined> {
  const { showOpenFilePicker } = pickers();
  if (!showOpenFilePicker) return "by list";
  try {
    const [handle] = await showOpenFilePicker.call(window, {
      types: [
        { description: "Workbooks", accept: { [plain]: [".xlsx"], [withMacros]: [".xlsm"] } },
      ],
      id: "titrebook",
    });
    const file = await handle?.getFile();
    return handle && file ? { file, disk: { handle, stamp: stampOf(file) } } : undefined;
  } catch (thrown) {
    return isGivenUp(thrown) ? undefined : "by list";
  }
}
