/**
 * A loader of the build: what the renderer of the embedded spreadsheet would bring along and a sheet never
 * uses, and the few words that stand in its place.
 */
import { pathToFileURL } from "node:url";

/** The three sets of letters that the renderer asks for, as the expressions that its library makes of them. */
async function lettersWorkedOut(library) {
  const made = await import(pathToFileURL(library).href);
  return ["letters", "all", "punctuations"]
    .map((set) => `export const ${set} = () => ({ toRegExp: () => ${made[set]().toRegExp()} });`)
    .join("\n");
}

/** @type {{ file: RegExp, text: string | ((file: string) => Promise<string>) }[]} */
const standIns = [
  {
    // 77 dictionaries of hyphenation, 5 MB: cells are not hyphenated.
    file: /[\\/]engine-render[\\/]lib[\\/]es[\\/][a-z][a-z0-9-]*-[\w-]{8}\.js$/,
    text: "export {};",
  },
  {
    // In which language a text is, 100 kB: asked for hyphenation only. "und" is undetermined.
    file: /[\\/]franc-min[\\/]index\.js$/,
    text: 'export const franc = () => "und";',
  },
  {
    // Reads font files of the machine, which the page never asks for (see mended-library.js).
    file: /[\\/]opentype\.js[\\/]dist[\\/]/,
    text: 'export const parse = () => { throw new Error("No font files are read here."); };',
  },
  {
    // All properties of all characters, of which three expressions are made: they are made here.
    file: /[\\/]cjk-regex[\\/]lib[\\/]index\.js$/,
    text: lettersWorkedOut,
  },
];

/** Which files a stand-in is there for. */
export const stoodInFor = standIns.map(({ file }) => file);

export default async function standIn() {
  const { text } = standIns.find(({ file }) => file.test(this.resourcePath));
  return typeof text === "string" ? text : await text(this.resourcePath);
}
