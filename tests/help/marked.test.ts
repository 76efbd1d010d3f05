/** What is said of the trade says where it comes from, in the same breath. */
import { describe, expect, it } from "vitest";
import { catalogue } from "../../src/functions/catalogue";
import { helpSite } from "../../src/help/site";

const site = helpSite(catalogue);

const plainOf = (file: string): string =>
  (site[file] ?? "")
    .replace(/<\/(?:p|li|td|th|dd|dt|h\d)>/g, "\n")
    .replace(/<[^>]+>/g, "")
    .replaceAll("&#39;", "'");

/** The paragraph, point or cell in which something is said. */
const whereSaid = (file: string, said: RegExp): string =>
  plainOf(file)
    .split("\n")
    .find((each) => said.test(each)) ?? "";

describe("a fact of the trade", () => {
  it.each([
    ["mistakes.html", /blank can be half of the titre/],
    ["mistakes.html", /slow batch that may not finish/],
    ["mistakes.html", /emulsion that is hard to wash/],
    ["sampletoweigh.html", /twenty of the smallest steps/],
    ["titrant.html", /away from light/],
    ["titrant.html", /a known oil comes out differently/],
    ["chargepercent.html", /are in use/],
    ["concordant.html", /is usual with a 25 or 50 mL burette/],
    ["pretreatment.html", /a second step\./],
    ["route.html", /1 and 15 %/],
    ["oilmass.html", /Where no oil is named/],
    ["samplegrams.html", /is about 0\.915 g/],
    ["first-titration.html", /7 g\/L of pure KOH/],
  ])("%s: %s is marked as common practice", (file, said) => {
    expect(whereSaid(file, said)).toMatch(/common practice(?:, no| without a) source/);
  });

  it.each([
    ["pretreatment.html", /Aim: below 1 % FFA, best 0\.5 to 1 %/],
    ["pretreatment.html", /Water stops the step/],
    ["molarratio.html", /usual excess/],
    ["soap.html", /may not settle/],
    ["methanol.html", /Left out, the ratio/],
    ["batch.html", /Left out, the ratio/],
    ["catalyst.html", /no dose is given/],
    ["dose.html", /no dose is given/],
    ["titrant.html", /85 to 92 %/],
  ])("%s: %s is marked as commonly cited", (file, said) => {
    expect(whereSaid(file, said)).toContain("commonly cited");
  });
});

describe("the page of the acid step", () => {
  it("says that sulfuric acid left over counts in the next titration, and what follows", () => {
    const said = whereSaid("pretreatment.html", /left in the oil counts as FFA/);
    expect(said).toMatch(/\(ISO 660\).*right for the dose, too high to judge the step by/);
  });

  it("warns of the same acid counted twice", () => {
    expect(plainOf("pretreatment.html")).toMatch(/never comes on top of a dose/);
  });
});

describe("every page with a dose of lye for a batch", () => {
  it.each(["catalyst", "catalystfromffa", "dose", "whatif"])("%s: is no permission", (page) => {
    expect(plainOf(`${page}.html`)).toContain("A result is not a permission.");
  });
});
