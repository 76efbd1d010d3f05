/** Makes an authority, has it sign for localhost, and keeps all of it but the authority's key. */
import { chmodSync, rmSync } from "node:fs";
import { generateCertificates } from "office-addin-dev-certs";
import type { CertificateFiles } from "./folder";

/** A year, so that nobody meets an expired one in the middle of a season. */
const days = 365;

export async function makeCertificates(files: CertificateFiles): Promise<void> {
  // The generator writes nothing where an authority stands already.
  for (const file of Object.values(files) as string[]) rmSync(file, { force: true });
  await generateCertificates(files.authority, files.certificate, files.key, days, [
    "localhost",
    "127.0.0.1",
  ]);
  chmodSync(files.key, 0o600);
}
