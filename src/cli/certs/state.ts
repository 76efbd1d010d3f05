/** What is to be said of the certificates that stand in a folder. */
import { createPrivateKey, X509Certificate } from "node:crypto";
import { existsSync, readFileSync } from "node:fs";
import type { CertificateFiles } from "./folder";

export type CertificateState =
  | { readonly state: "missing"; readonly file: string }
  | { readonly state: "unreadable"; readonly file: string }
  | { readonly state: "not-a-pair" }
  | { readonly state: "not-for-localhost" }
  | { readonly state: "not-signed" }
  | { readonly state: "expired"; readonly on: Date }
  | { readonly state: "good"; readonly until: Date };

function readAs<T>(file: string, read: (pem: string) => T): T | undefined {
  try {
    return read(readFileSync(file, "utf8"));
  } catch {
    return undefined;
  }
}

const asCertificate = (pem: string): X509Certificate => new X509Certificate(pem);

/** @param now  the moment for which they must be good */
export function certificateState(files: CertificateFiles, now: Date): CertificateState {
  const missing = Object.values(files).find((file: string) => !existsSync(file)) as
    string | undefined;
  if (missing !== undefined) return { state: "missing", file: missing };
  const authority = readAs(files.authority, asCertificate);
  if (!authority) return { state: "unreadable", file: files.authority };
  const certificate = readAs(files.certificate, asCertificate);
  if (!certificate) return { state: "unreadable", file: files.certificate };
  const key = readAs(files.key, createPrivateKey);
  if (!key) return { state: "unreadable", file: files.key };
  if (!certificate.checkPrivateKey(key)) return { state: "not-a-pair" };
  if (!certificate.verify(authority.publicKey)) return { state: "not-signed" };
  if (certificate.checkHost("localhost") === undefined) return { state: "not-for-localhost" };
  const until = new Date(certificate.validTo);
  return until <= now ? { state: "expired", on: until } : { state: "good", until };
}

const day = (date: Date): string => date.toISOString().slice(0, 10);

/** The state in one sentence, with what mends it. */
export function saidOf(found: CertificateState): string {
  switch (found.state) {
    case "missing":
      return `There are no certificates (${found.file} is missing): run npm run certs.`;
    case "unreadable":
      return `${found.file} cannot be read as what it should be: run npm run certs -- --anew.`;
    case "not-a-pair":
      return "The certificate and its key do not belong together: run npm run certs -- --anew.";
    case "not-for-localhost":
      return "The certificate is not for localhost: run npm run certs -- --anew.";
    case "not-signed":
      return "The certificate was not signed by the authority beside it: run npm run certs -- --anew.";
    case "expired":
      return `The certificate was good until ${day(found.on)}: run npm run certs -- --anew.`;
    case "good":
      return `The certificate is good until ${day(found.until)}.`;
  }
}
