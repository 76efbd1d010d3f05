/** A host that hands out a file, or fails to: for the task that shares one. */
import { fault, type Host } from "../../../src/sheet/port";
import { sampleLogbook } from "../../../src/workbook/sample/logbook";
import { isFileProblem, newXlsx, sayFile } from "../../../src/xlsx";

function logbookFile(): Uint8Array {
  const bytes = newXlsx(sampleLogbook());
  if (isFileProblem(bytes)) throw new Error(sayFile(bytes));
  return bytes;
}

/**
 * `kind`: "logbook"; "opens" for a program that opens copies and saves none, "opens-none" for one that
 * fails to; "edited" for one in which somebody is typing. The rest is the host's.
 */
export function withFile<H extends Host>(host: H, kind: string): H {
  const file = kind === "edited" ? undefined : logbookFile();
  const opensFiles = kind.startsWith("opens");
  const trouble = kind === "opens" ? undefined : fault("too-large");
  return new Proxy(host, {
    get(target, name) {
      if (name === "fileBytes") return () => Promise.resolve(file ?? fault("being-edited"));
      if (name === "openFile") return () => Promise.resolve(trouble);
      if (name === "capabilities") {
        const can = { hasFileBytes: true, opensFiles, savesFiles: !opensFiles };
        return async () => ({ ...(await target.capabilities()), ...can });
      }
      const value: unknown = Reflect.get(target, name, target);
      return typeof value === "function" ? (value.bind(target) as unknown) : value;
    },
  });
}
