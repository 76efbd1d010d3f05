/** The names LET and LAMBDA make: files mark each of them, wherever it is used, with _xlpm. */
import type { Replacement } from "../../formula/splice";
import type { Call, Expression, Omitted, Reference } from "../../formula/tree";
import { nodesOf } from "../../formula/walk";
import { plainName } from "../../formula/names";

const isName = (given: Expression | Omitted | undefined): given is Reference =>
  given?.kind === "reference" && given.shape === "name" && !/^_xlpm\./i.test(given.text);

/** Every second argument of LET but the last; every argument of LAMBDA but the last. */
function made(call: Call): Reference[] {
  const name = plainName(call.name);
  const step = name === "LET" ? 2 : 1;
  if (name !== "LET" && name !== "LAMBDA") return [];
  return call.arguments.filter(
    (given, index): given is Reference =>
      index % step === 0 && index < call.arguments.length - 1 && isName(given),
  );
}

/** A name in square brackets is one that may be left out: [x]. */
export function localNames(tree: Expression): Replacement[] {
  const marked = new Map<number, Replacement>();
  for (const node of nodesOf(tree)) {
    if (node.kind !== "call") continue;
    const names = new Set(made(node).map((each) => each.text.toLowerCase()));
    if (names.size === 0) continue;
    for (const used of nodesOf(node)) {
      if (isName(used) && names.has(used.text.toLowerCase())) {
        marked.set(used.start, { start: used.start, end: used.start, text: "_xlpm." });
      } else if (used.kind === "call" && used.link === "" && names.has(used.name.toLowerCase())) {
        marked.set(used.start, { start: used.start, end: used.start, text: "_xlpm." });
      }
    }
  }
  return [...marked.values()];
}
