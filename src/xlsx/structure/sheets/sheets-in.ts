/** The sheets that a formula of a file names, and where. */
import { type SheetName, sheetOf } from "../../../sheet/formula/reference";
import { type Span, type TokenKind, tokensOf } from "../../../sheet/formula/token";
import { refuse } from "../../problem";

export interface NamedSheet extends Span, SheetName {}

/** Before a lost reference the sheet is a token by itself. */
const referring = new Set<TokenKind>(["cells", "lines", "name", "structured", "function"]);
const before = /^(?:'(?:[^']|'')*'|(?:\[[^\]]+\])?[^[\]'!]*)(?=!)/;

/** Each where it stands, without its exclamation mark; sheets of other workbooks among them. */
export function sheetsIn(formula: string): NamedSheet[] {
  if (!formula.includes("!")) return [];
  return tokensOf(formula).flatMap(({ kind, text, start }): NamedSheet[] => {
    if (kind === "unknown" && text.includes("!")) refuse({ code: "unreadable-formula" });
    const written =
      kind === "sheet" ? text : referring.has(kind) ? (before.exec(text)?.[0] ?? "") : "";
    const sheets = written === "" ? undefined : sheetOf({ text: `${written}!` });
    return sheets ? [{ start, end: start + written.length, ...sheets }] : [];
  });
}
