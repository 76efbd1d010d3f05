/** LibreOffice as a printer: how many pages a workbook takes. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

const program = process.env.SOFFICE ?? "soffice";

export function printedBy(bytes: Uint8Array): number {
  const folder = mkdtempSync(join(tmpdir(), "printed-"));
  try {
    writeFileSync(join(folder, "book.xlsx"), bytes);
    execFileSync(
      program,
      [
        `-env:UserInstallation=${pathToFileURL(join(folder, "profile")).href}`,
        ...["--headless", "--convert-to", "pdf", "--outdir", folder, join(folder, "book.xlsx")],
      ],
      { stdio: "ignore", timeout: 110_000 },
    );
    const pdf = readFileSync(join(folder, "book.pdf"), "latin1");
    return [...pdf.matchAll(/\/Type\s*\/Page\b(?!s)/g)].length;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
