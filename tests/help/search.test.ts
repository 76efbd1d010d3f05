import { describe, expect, it } from "vitest";
import { catalogue } from "../../src/functions/catalogue";
import { entriesOf, searchable } from "../../src/help/contents";
import { fit, levelled } from "../../src/help/search/find";
import { helpSite } from "../../src/help/site";

const site = helpSite(catalogue);
const entries = Object.entries(site)
  .filter(([name]) => name.endsWith(".html") && !["index.html", "search.html"].includes(name))
  .flatMap(([name, html]) => entriesOf(name, html));

const found = (wanted: string): string[] =>
  entries
    .map((entry) => ({ address: entry.address, fit: fit(searchable(entry), wanted) }))
    .filter((entry) => entry.fit > 0)
    .sort((a, b) => b.fit - a.fit)
    .map(({ address }) => address);

describe("the search", () => {
  it.each([
    ["methanol", "methanol.html"],
    ["dose", "dose.html"],
    ["acid number", "acidvalue.html"],
    ["titer", "first-titration.html"],
    ["standardizing titrant", "titrant.html"],
    ["glycerin", "glossary.html#glycerol"],
    ["blank twice", "mistakes.html#the-blank-is-taken-off-twice"],
    ["gallon", "mistakes.html#which-gallon"],
    ["privacy telemetry", "privacy.html#what-is-loaded"],
    ["cache", "install.html#when-something-is-stale"],
    ["how much lye", "answers.html#how-much-lye-do-i-need"],
    ["how much lye do I need?", "answers.html#how-much-lye-do-i-need"],
    ["turmeric", "answers.html#can-i-use-turmeric-as-the-indicator"],
    ["start a new logbook", "answers.html#start-a-new-logbook"],
    ["several lots", "answers.html#several-lots-in-one-day"],
    ["pink fades", "answers.html#the-pink-colour-fades"],
    ["cors", "hosting.html"],
  ])("for %s finds %s among the first five, or says nothing wrong", (wanted, address) => {
    const first = found(wanted);
    if (wanted === "cors") expect(first).toEqual([]);
    else expect(first.slice(0, 5)).toContain(address);
  });

  it("finds nothing where nothing is said", () => {
    expect(found("zebra")).toEqual([]);
    expect(found("methanol zebra")).toEqual([]);
  });

  it("takes any characters as they are", () => {
    for (const odd of ["(", "[a", "\\", "*", "a+b?", "%", "±", "<b>"]) {
      expect(() => found(odd)).not.toThrow();
    }
  });

  it("knows words that are spelt in two ways as one", () => {
    expect(levelled("Titer, Liters of Sulphuric acid, color")).toBe(
      "titre, litres of sulfuric acid, colour",
    );
  });

  it("lists every page and every heading with its address, and is small", () => {
    const listed = site["search.html"] ?? "";
    for (const { address } of entries) expect(listed).toContain(`href="${address}"`);
    expect(listed.length).toBeLessThan(120_000);
  });
});
