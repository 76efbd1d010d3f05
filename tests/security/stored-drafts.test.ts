/** What the browser kept may have been tampered with, or be half of what it was: the pane opens all the same. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { draftFrom as batchFrom } from "../../src/taskpane/batch/stored";
import { newDraft as newBatch } from "../../src/taskpane/batch/draft";
import { viewOf as batchView } from "../../src/taskpane/batch/view-of";
import { draftFrom as titrationFrom } from "../../src/taskpane/titrate/stored";
import { newDraft as newTitration } from "../../src/taskpane/titrate/draft";
import { viewOf as titrationView } from "../../src/taskpane/titrate/view-of";
import { draftFrom as whatIfFrom } from "../../src/taskpane/what-if/stored";
import { newDraft as newWhatIf } from "../../src/taskpane/what-if/draft";
import { viewOf as whatIfView } from "../../src/taskpane/what-if/view-of";
import { namesOfObjects } from "./names-as-keys";

const odd = fc.oneof(
  fc.constantFrom<unknown>(
    null,
    -1,
    1e308,
    true,
    "",
    "1e999",
    "9".repeat(10_000),
    "-0",
    "NaN",
    "1,2\n".repeat(20_000),
    "\ud800",
    "<img src=x onerror=alert(1)>",
    [],
    {},
    ...namesOfObjects,
  ),
  fc.jsonValue(),
);

/** A draft with one of its parts, at any depth, become something else. */
function tampered(draft: object): fc.Arbitrary<unknown> {
  const paths: (readonly string[])[] = [];
  const look = (value: unknown, path: readonly string[]): void => {
    paths.push(path);
    if (typeof value !== "object" || value === null) return;
    for (const [key, inner] of Object.entries(value)) look(inner, [...path, key]);
  };
  look(draft, []);
  return fc
    .tuple(fc.array(fc.tuple(fc.constantFrom(...paths), odd), { minLength: 1, maxLength: 4 }))
    .map(([changes]) => {
      let copy: unknown = structuredClone(draft);
      for (const [path, value] of changes) {
        const last = path.at(-1);
        if (last === undefined) copy = value;
        let at = copy as Record<string, unknown> | undefined;
        for (const key of path.slice(0, -1)) at = at?.[key] as typeof at;
        if (last !== undefined && typeof at === "object" && at !== null) at[last] = value;
      }
      return copy;
    });
}

const reading = { used: "2.4", start: "0.1", end: "2.5", mass: "10", omitted: "bubble" };
const titration = {
  ...newTitration("a", "2026-05-04"),
  titres: [reading, reading, { used: "2.45" }],
  blanks: [{ used: "0.15" }],
  typed: { molarity: "0.1", sampleMass: "10" },
};
const batch = { ...newBatch(), lots: [{ lot: "F-207", share: "50" }], typed: { amount: "100" } };
const whatIf = {
  ...newWhatIf(),
  lots: ["F-207"],
  lists: { sizes: "100", acid: "2", assay: "", charge: "" },
};

const opens: readonly (readonly [string, object, (stored: unknown) => unknown])[] = [
  [
    "titration",
    titration,
    (stored) => {
      const draft = titrationFrom(stored);
      return draft && titrationView(draft, ".", "2026-05-04");
    },
  ],
  ["batch", batch, (stored) => batchView(batchFrom(stored), ".", [])],
  ["what-if table", whatIf, (stored) => whatIfView(whatIfFrom(stored), ".", [])],
];

describe("a kept draft that was tampered with", () => {
  it.each(opens)("of a %s is read as far as it is sound", (_, draft, opened) => {
    expect(opened(draft)).toBeDefined();
    fc.assert(
      fc.property(tampered(draft), (stored) => {
        opened(stored);
      }),
      { numRuns: 300 },
    );
  });

  it.each(opens)("of a %s may be anything at all", (_, __, opened) => {
    const anything = fc.oneof(fc.anything(), fc.jsonValue());
    fc.assert(
      fc.property(anything, (stored) => {
        opened(stored);
      }),
      { numRuns: 200 },
    );
  });
});
