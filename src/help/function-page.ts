/** The help page of one worksheet function, from its catalogue entry alone. */
import { sources } from "../core/reference/sources";
import { namespace } from "../functions/names";
import type { NamedArgument, WorksheetFunction } from "../functions/define";
import { isOptional, shownName } from "../functions/metadata";
import { isProblem } from "../core/problem/problem";
import { readFormula } from "../sheet/formula/read";
import { titreCalls } from "../sheet/formula/walk";
import type { PlainCell } from "../partner/plain/page";
import { plainCall } from "../partner/plain/plain-call";
import { equationInWords } from "../workbook/explain/equation";
import { code, list, listing, page, table, text } from "./page";

const bracketed = (argument: NamedArgument): string =>
  isOptional(argument) ? `[${argument.name}]` : argument.name;

/** TITRE.CORRECTED(titres, [blanks]) */
export const signature = (entry: WorksheetFunction): string =>
  `${namespace}.${entry.id}(${entry.arguments.map(bracketed).join(", ")})`;

function shownAnswer(entry: WorksheetFunction): string {
  const { gives } = entry.example;
  if (!Array.isArray(gives)) return code(String(gives));
  const [head, ...rows] = gives as unknown[][];
  const cells = (row: unknown[] = []) => row.map((cell) => text(String(cell)));
  return rows.length === 0
    ? `<code>${cells(head).join(" &nbsp; ")}</code>`
    : table(
        cells(head),
        rows.map((row) => cells(row)),
      );
}

const argumentRows = (entry: WorksheetFunction): string[][] =>
  entry.arguments.map((argument) => [
    code(shownName(argument)),
    text(argument.says) + (argument.list ? " A range." : ""),
    text(argument.allowed),
    text(argument.whenLeftOut ?? "must be given"),
  ]);

/** More lines than these are folded away until they are asked for. */
const mostLines = 6;

const plainLine = ({ cell, label, formula }: PlainCell): string => {
  const what = label === "" ? cell : `${cell}, ${label}`;
  return `${text(what)}: ${code(formula)}`;
};

/** The example without the add-in, as a partner copy writes it. */
function plainExample(entry: WorksheetFunction): string {
  const read = readFormula(entry.example.formula);
  const [call] = isProblem(read) ? [] : titreCalls(read.tree);
  if (!call) return "";
  const plain = plainCall(entry, call);
  if (plain.kind !== "formulas") return "<p>None: a partner copy keeps what stands there.</p>";
  const { helpers, answer } = plain;
  const lead = "<p>The same example for a partner without the add-in:</p>";
  const [only] = answer;
  if (only && helpers.length === 0 && answer.length === 1) {
    return `${lead}<p>${code(only.formula)}</p>`;
  }
  const lines = [...helpers, ...answer].map(plainLine);
  const how = `<p>${helpers.length === 0 ? "" : "Cells of column H hold the steps in between. "}The answer stands from A1 on.</p>`;
  const shown =
    lines.length <= mostLines
      ? list(lines)
      : `<details><summary>${lines.length} cells</summary>${list(lines)}</details>`;
  return lead + how + shown;
}

export const functionPage = (entry: WorksheetFunction): string =>
  page(
    entry.id,
    `
<h1>${text(entry.id)}</h1>
<p class="lead">${text(entry.summary)}</p>
<p>${code(`=${signature(entry)}`)}</p>
<p>Gives: ${text(entry.result)}${entry.spills ? ". It spills into the cells beside and below, so it cannot stand inside a table" : ""}.</p>
${entry.arguments.length > 0 ? `<h2>Arguments</h2>${listing(["Argument", "What it is", "Allowed", "If left out"], argumentRows(entry))}` : ""}
<h2>Equation</h2>
<p>${code(equationInWords(entry))}</p>
<h2>Example</h2>
<p>${code(entry.example.formula)} gives</p>
${shownAnswer(entry)}
<h2>In plain formulas</h2>
${plainExample(entry)}
<h2>Mind</h2>
${list(entry.notes.map(text))}
<h2>Sources</h2>
${list(entry.sources.map((id) => text(sources[id])))}
<p><a href="index.html">All functions</a> · <a href="cautions.html">Cautions</a></p>`,
  );
