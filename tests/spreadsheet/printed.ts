/** LibreOffice as a printer: how many pages each of some workbooks takes, in one start of the program. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

const program = process.env.SOFFICE ?? "soffice";

export function printedBy(books: readonly Uint8Array[]): number[] {
  const folder = mkdtempSync(join(tmpdir(), "printed-"));
  try {
    const paths = books.map((_, at) => join(folder, `book-${String(at)}`));
    books.forEach((bytes, at) => {
      writeFileSync(`${paths[at] ?? ""}.xlsx`, bytes);
    });
    execFileSync(
      program,
      [
        `-env:UserInstallation=${pathToFileURL(join(folder, "profile")).href}`,
        ...["--headless", "--convert-to", "pdf", "--outdir", folder],
        ...paths.map((path) => `${path}.xlsx`),
      ],
      { stdio: "ignore", timeout: 290_000 },
    );
    return paths.map((path) => {
      const pdf = readFileSync(`${path}.pdf`, "latin1");
      return [...pdf.matchAll(/\/Type\s*\/Page\b(?!s)/g)].length;
    });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
