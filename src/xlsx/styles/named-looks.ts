/** How the cells we make look, by what they mean. No colour is the only sign of a meaning. */
import type { BookStyle } from "../../sheet/book";
import type { LookChange } from "../patch/edits";

export const namedLooks: Readonly<Record<BookStyle, LookChange>> = {
  title: { bold: true, size: 15, colour: "#12343b" },
  heading: { bold: true, wraps: true, colour: "#12343b", fill: "#dfeaea" },
  input: { fill: "#fffaea" },
  calculated: { colour: "#0b5b65" },
  large: { bold: true, size: 22, colour: "#14303a" },
  words: { wraps: true, vertical: "top" },
  caution: { colour: "#7a2e0e", fill: "#fdf1e7", wraps: true, vertical: "top" },
};
