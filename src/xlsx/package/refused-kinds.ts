/** Files that are not what is read here, told by their first bytes, so that each gets its own sentence. */
import { refuse } from "../problem";

const startsWith = (bytes: Uint8Array, signature: readonly number[]): boolean =>
  signature.every((byte, index) => bytes[index] === byte);

const compound = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];
const zip = [0x50, 0x4b];

/** The stream of a compound file that holds a locked package (MS-OFFCRYPTO 1.3.2), in UTF-16. */
const lockedStream = "EncryptedPackage";

function holdsUtf16(bytes: Uint8Array, name: string): boolean {
  const wanted = [...name].flatMap((letter) => [letter.charCodeAt(0), 0]);
  const first = wanted[0] as number;
  for (let at = bytes.indexOf(first); at >= 0; at = bytes.indexOf(first, at + 1)) {
    if (wanted.every((byte, index) => bytes[at + index] === byte)) return true;
  }
  return false;
}

export function refuseOtherFiles(bytes: Uint8Array): void {
  if (startsWith(bytes, compound)) {
    refuse({ code: holdsUtf16(bytes, lockedStream) ? "encrypted" : "old-format" });
  }
  if (!startsWith(bytes, zip)) refuse({ code: "not-a-workbook" });
}

const openDocument = "application/vnd.oasis.opendocument";
const otherPrograms: readonly (readonly [RegExp, string])[] = [
  [/wordprocessingml/, "a text document"],
  [/presentationml/, "a presentation"],
];

/** By the content type of its main part, or the type an OpenDocument file gives itself. */
export function refuseOtherContent(contentType: string, ownType: string): void {
  if (ownType.startsWith(openDocument)) {
    refuse({ code: "other-format", found: "an OpenDocument file" });
  }
  if (/sheet\.binary/.test(contentType)) refuse({ code: "binary-format" });
  const other = otherPrograms.find(([mark]) => mark.test(contentType));
  if (other) refuse({ code: "other-format", found: other[1] });
}
