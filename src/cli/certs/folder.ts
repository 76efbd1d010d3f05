/** Where the certificates of this checkout stand: git-ignored, for this machine alone. */
import { fileURLToPath } from "node:url";

export interface CertificateFiles {
  /** The authority that signed for localhost. Its own key is thrown away as soon as it has signed. */
  readonly authority: string;
  readonly certificate: string;
  readonly key: string;
}

export const certificateFiles = (folder: string): CertificateFiles => ({
  authority: `${folder}/ca.crt`,
  certificate: `${folder}/localhost.crt`,
  key: `${folder}/localhost.key`,
});

export const certificateFolder = fileURLToPath(new URL("../../../.certs", import.meta.url));
