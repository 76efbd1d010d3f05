/**
 * One function as the script editor of Google Sheets wants it: a declaration with a doc comment, of which
 * it makes the help shown while typing (its maker's "Custom functions in Google Sheets"). Its names may
 * hold no dot, so TITRE.DOSE is TITRE_DOSE there.
 */
import type { NamedArgument, WorksheetFunction } from "../../../functions/define";
import { described, shownName } from "../../../functions/metadata";
import { namespace } from "../../../functions/names";

/** A text that does not end the comment it stands in, and begins no tag. */
const inComment = (text: string): string =>
  text.replaceAll("*/", "* /").replaceAll("@", "at ").replace(/\s+/g, " ");

/** A word may often be a figure instead: a molar mass, blanks in mL. */
function typeOf({ words, list }: NamedArgument): string {
  const one = words ? "(string|number)" : "number";
  return list ? `${one}|Array<Array<${one}>>` : one;
}

const parameter = (argument: NamedArgument): string =>
  ` * @param {${typeOf(argument)}} ${shownName(argument)} ${inComment(described(argument))}`;

export function wrapperOf(entry: WorksheetFunction): string {
  const names = entry.arguments.map(shownName).join(", ");
  return [
    "/**",
    ` * ${inComment(entry.summary)}`,
    " *",
    ...entry.arguments.map(parameter),
    ` * @return ${inComment(entry.result)}`,
    " * @customfunction",
    " */",
    `function ${namespace}_${entry.id}(${names}) {`,
    `  return titreCall_(${JSON.stringify(entry.id)}, [${names}]);`,
    "}",
  ].join("\n");
}
