/** Who the add-in is, by its manifest. */
import type { AddIn } from "../../../xlsx";
import { named, parseManifest } from "../../manifest/parse";

export function addInOf(manifest: string): AddIn {
  const root = parseManifest(manifest);
  const textOf = (name: string): string => {
    const text = named(root, name)[0]?.text.trim() ?? "";
    // it goes into scripts as it is
    if (!/^[0-9a-f.-]+$/i.test(text)) throw new Error(`${name} of the manifest is "${text}".`);
    return text;
  };
  return { id: textOf("Id"), version: textOf("Version") };
}
