/** Text into XML, and the escapes of the file format for what XML cannot hold. */

const marks: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "\n": "&#10;",
  "\t": "&#9;",
  "\r": "&#13;",
};

/** For the text of an element. A line feed stands as it is. */
export const escapeText = (text: string): string =>
  /[&<>\r]/.test(text) ? text.replace(/[&<>\r]/g, (mark) => marks[mark] as string) : text;

/** For the value of an attribute in quotation marks. */
export const escapeAttribute = (text: string): string =>
  text.replace(/[&<>"\n\t\r]/g, (mark) => marks[mark] as string);

const hex = (code: number): string => code.toString(16).toUpperCase().padStart(4, "0");

/**
 * The file format writes a character that XML cannot hold as _x000D_ (ECMA-376 part 1, 22.9.2.19), so
 * a text that reads like that has its first low line written so. Half a character (a lone surrogate) is
 * none that XML, or UTF-8, can hold.
 */
export const encodeString = (text: string): string =>
  text
    .replace(/_(?=x[0-9A-Fa-f]{4}_)/g, "_x005F_")

    .replace(/[\u0000-\u0008\u000b-\u001f\ufffe\uffff]|\p{Surrogate}/gu, (character) => {
      return `_x${hex(character.charCodeAt(0))}_`;
    });

export const decodeString = (text: string): string =>
  text.includes("_x")
    ? text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) =>
        String.fromCharCode(parseInt(code, 16)),
      )
    : text;
