/** install/: what makes the add-in known to the spreadsheet program, and its undoing; all in one zip too. */
import { strToU8, type Zippable, zipSync } from "fflate";
import { helpPage } from "../help-page";
import { addInOf } from "./add-in";
import { installOnMac, removeFromMac } from "./mac";
import { startWorkbook } from "./start-workbook";
import { installOnWindows, removeFromWindows } from "./windows";

/** The same bytes every time. */
const stamp = "1980-01-02T00:00:00";

/** For whoever unpacks it on a Mac: a script may be run. */
const asOnUnix = (name: string): { os: number; attrs: number } => ({
  os: 3,
  attrs: (name.endsWith(".sh") ? 0o100755 : 0o100644) << 16,
});

/** @param manifest as it is handed out, for the address it is served from */
export function installFiles(manifest: string): Record<string, string | Buffer> {
  const addIn = addInOf(manifest);
  const files = {
    "manifest.xml": manifest,
    "install-windows.cmd": installOnWindows(addIn),
    "remove-windows.cmd": removeFromWindows(addIn),
    "install-mac.sh": installOnMac(addIn),
    "remove-mac.sh": removeFromMac(addIn),
    "start.xlsx": Buffer.from(startWorkbook(addIn)),
  };
  const packed: Zippable = {};
  for (const [name, content] of Object.entries(files)) {
    const bytes = typeof content === "string" ? strToU8(content) : content;
    packed[`titrebook/${name}`] = [bytes, asOnUnix(name)];
  }
  return {
    ...Object.fromEntries(Object.entries(files).map(([name, it]) => [`install/${name}`, it])),
    "install/index.html": helpPage("install.html", "../help/"),
    "install/titrebook.zip": Buffer.from(zipSync(packed, { mtime: stamp })),
  };
}
