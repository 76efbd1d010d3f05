/** A host that hands out a file, or fails to: for the task that shares one. */
import { fault, type Host } from "../../../src/sheet/port";
import { sampleLogbook } from "../../../src/workbook/sample/logbook";
import { isFileProblem, newXlsx, sayFile } from "../../../src/xlsx";

function logbookFile(): Uint8Array {
  const bytes = newXlsx(sampleLogbook());
  if (isFileProblem(bytes)) throw new Error(sayFile(bytes));
  return bytes;
}

/** `kind`: "logbook", or "edited" for a program in which somebody is typing. The rest is the host's. */
export function withFile<H extends Host>(host: H, kind: string): H {
  const file = kind === "logbook" ? logbookFile() : undefined;
  return new Proxy(host, {
    get(target, name) {
      if (name === "fileBytes") return () => Promise.resolve(file ?? fault("being-edited"));
      if (name === "capabilities") {
        return async () => ({ ...(await target.capabilities()), hasFileBytes: true });
      }
      const value: unknown = Reflect.get(target, name, target);
      return typeof value === "function" ? (value.bind(target) as unknown) : value;
    },
  });
}
