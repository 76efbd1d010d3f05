/** The names of entries: read as UTF-8, and refused where they could lead elsewhere or mean two parts. */
import { refuse } from "../problem";

const utf8 = new TextDecoder("utf-8");

export const nameOf = (bytes: Uint8Array): string => utf8.decode(bytes);

const isUnsafe = (name: string): boolean =>
  name === "" ||
  /[\u0000-\u001f\\]|^\/|^[a-z]:/i.test(name) ||
  name.split("/").some((step) => step === ".." || step === ".");

/** Part names differ by more than case (ECMA-376 part 2, 9.1.1), so here they must too. */
export function refuseUnsafeNames(names: readonly string[]): void {
  const seen = new Set<string>();
  for (const name of names) {
    if (isUnsafe(name)) refuse({ code: "unsafe-name", name });
    const folded = name.toLowerCase();
    if (seen.has(folded)) refuse({ code: "repeated-name", name });
    seen.add(folded);
  }
}
