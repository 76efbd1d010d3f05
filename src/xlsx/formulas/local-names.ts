/** The names LET and LAMBDA make: files mark each of them, wherever it is used, with _xlpm. */
import type { Replacement } from "../../sheet/formula/splice";
import type { Call, Expression, Omitted, Reference } from "../../sheet/formula/tree";
import { nodesOf } from "../../sheet/formula/walk";
import { plainName } from "../../sheet/formula/names";

const isName = (given: Expression | Omitted | undefined): given is Reference =>
  given?.kind === "reference" && given.shape === "name" && !/^_xlpm\./i.test(given.text);

interface Made {
  readonly name: Reference;
  /** The arguments that know the name begin with this one. */
  readonly knownFrom: number;
}

/**
 * Every second argument of LET but the last, known once its value is given; every argument of LAMBDA but
 * the last.
 */
function made(call: Call): Made[] {
  const called = plainName(call.name);
  if (call.link !== "" || (called !== "LET" && called !== "LAMBDA")) return [];
  const step = called === "LET" ? 2 : 1;
  return call.arguments.slice(0, -1).flatMap((name, index) => {
    if (index % step !== 0 || !isName(name)) return [];
    return [{ name, knownFrom: step === 2 ? index + 2 : call.arguments.length - 1 }];
  });
}

/** Where a name made here is used, or called. */
function* usesOf(call: Call, { name, knownFrom }: Made): Generator<number> {
  const sought = name.text.toLowerCase();
  yield name.start;
  for (const argument of call.arguments.slice(knownFrom)) {
    if (argument.kind === "omitted") continue;
    for (const used of nodesOf(argument)) {
      if (isName(used) && used.text.toLowerCase() === sought) yield used.start;
      const isCall = used.kind === "call" && used.link === "";
      if (isCall && used.name.toLowerCase() === sought) yield used.start;
    }
  }
}

/** A name in square brackets is one that may be left out: [x]. */
export function localNames(tree: Expression): Replacement[] {
  const marked = new Set<number>();
  for (const node of nodesOf(tree)) {
    if (node.kind !== "call") continue;
    for (const name of made(node)) for (const start of usesOf(node, name)) marked.add(start);
  }
  return [...marked].map((start) => ({ start, end: start, text: "_xlpm." }));
}
