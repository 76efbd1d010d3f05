/** Several titres in one cell: "1.5/1.6/1.55", "1,5; 1,6", "2.4 & 2.5". */
import { type LogbookValue } from "../recognising/sheet-cells";
import { numberFromText } from "../recognising/typed-number";

const marks = /\s*[/;|&+]\s*|\s+(?:and|und|y|e|et|en)\s+/i;
const longest = 80;
const mostFigures = 8;

const isPlain = (part: string): boolean => /^[+-]?(?:\d+(?:[.,]\d+)?|[.,]\d+)$/.test(part);

/** A comma between two figures parts them where it is no decimal mark: "2.4, 2.5". */
function partsOf(text: string): string[] {
  if (marks.test(text)) return text.split(marks);
  if (/,\s+/.test(text)) return text.split(/,\s+/);
  if (/\d\.\d+,\d+\.\d/.test(text)) return text.split(",");
  return text.split(/\s+/);
}

/** The figures, as they were typed; undefined for a cell that holds one, or anything else. */
export function figuresIn(value: LogbookValue): readonly string[] | undefined {
  if (typeof value !== "string" || value.length > longest) return undefined;
  const text = value.trim().replace(/\s*ml\.?$/i, "");
  const parts = partsOf(text).map((part) => part.trim().replace(/\s*ml\.?$/i, ""));
  const isList = parts.length >= 2 && parts.length <= mostFigures && parts.every(isPlain);
  return isList && parts.every((part) => numberFromText(part, "decimal") !== undefined)
    ? parts
    : undefined;
}
