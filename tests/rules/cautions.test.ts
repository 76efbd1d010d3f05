import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import {
  batchCautions,
  caution,
  cautions,
  cautionsFor,
  works,
} from "../../src/core/batch/cautions";
import { catalogue } from "../../src/functions/catalogue";
import { helpSite } from "../../src/help/site";
import { cautionsSheet } from "../../src/workbook/sample/cautions-sheet";
import { sampleLogbook } from "../../src/workbook/sample/logbook";
import type { BookSheet } from "../../src/sheet/book";
import { call } from "../functions/outcome";
import { cardOf } from "../workbook/card/computed";
import { slipwayBatch } from "../workbook/record/batch-records";
import { codeOf, filesUnder, root } from "./sources-of";

/** What hurts, and what is done about it, in the words of whoever was hurt by it. */
const mustBeSaid = [
  /small portions into cold methanol.*below about 40 °C.*that mixture.*into oil below about 55 °C/,
  /chars.*spits/,
  /no mild steel, zinc or aluminium/,
  /corrosive, poisonous and flammable at once/,
  /never water into acid, never acid onto lye/i,
  /never leave oil heating alone.*falling level.*thermostat and a cut-out.*ever holds methanol/i,
  // what the report says, and no more, stands before its name
  /a heater left on burned a shed down \(CDC, MMWR 55\(45\):1227\)\./,
  /at home: buy it from a licensed source \(CDC, MMWR 55\(45\):1227\)\./,
  /at most 200 ppm of it \(OSHA and NIOSH: NIOSH, IDLH values\)/,
  /no drill, brushed motor, plug or switch/,
  /6 to 36 %.*smell is no warning/,
  /about 11 °C/,
  /forced along the floor/,
  /plastic cannot be earthed.*feeds a fire/i,
  /below 45 °C: stop, wait/,
  /until their methanol is washed out.*catch fire as methanol does.*condenser.*vent.*no flame/i,
  /drum under vacuum collapses/,
  /never weld, cut or grind/i,
  /never work alone/i,
  /alcohol-resistant extinguisher and an eyewash/,
  /food bottles/,
  /children/,
  /waste.*carriers.*animal by-products.*duty.*insurer and landlord/,
  /advise against making biodiesel at home/,
  /goggles and the gloves/,
  /water under hot oil erupts/,
  /cool to about 55 °C/,
  /small portions, never the other way round.*base warms methanol/i,
  /no aluminium, zinc or tin.*hydrogen/i,
  /methoxide catches fire and poisons as well, and numbs what it hurts/,
  /what was titrated.*none of it down a drain/,
  /solid methoxide heats itself/i,
  /even when feeling well/,
  /none of it down a drain/,
  /oily rags/i,
  /calcium hydride and water make hydrogen.*spark.*rated for the pressure.*shield.*outdoors/i,
  /15 minutes or longer, never with vinegar/,
  /one-litre trial/,
  /safety data sheet.*local fire, environmental and fuel-excise rules.*qualified person/,
];

/** Words of a caution: where they stand in a text of ours, it draws them from the list. */
const cautionary =
  /goggles|gloves|\bflames?\b|spark\b|poison|corrosive|explo(?:de|sion)|catch(?:es)? fire|erupts|extinguisher|vinegar|carcinogen|hydrogen\b(?! phthalate)|never (?:water|acid|alone)|acid onto|slowly into|not a permission|safety data sheet|one-litre trial/i;

/** No caution: a word explained, a name, the head of a sheet that the cautions stand on. */
const explained = [
  "poisonous and flammable. [METHANOL]",
  "A result is not a permission. Tick each amount",
  "A titration task for wet gloves",
];

const worded = (text: string): boolean =>
  cautionary.test(explained.reduce((left, each) => left.replace(each, ""), text));

const textOf = ({ rows }: BookSheet): string =>
  rows
    .flatMap((row) => row.slice(0, 2).map((cell) => String(cell?.value ?? "")))
    .filter((words) => words !== "" && words !== "!")
    .join(" ");

const plainOf = (html: string): string =>
  html
    .replace(/<[^>]+>/g, " ")
    .replaceAll("&#39;", "'")
    .replaceAll("&quot;", '"')
    .replaceAll("&amp;", "&");

describe("the list of cautions", () => {
  it.each(mustBeSaid.map((said) => [said.source, said] as const))("says: %s", (_, said) => {
    expect(cautions.filter((each) => said.test(each)).length).toBeGreaterThan(0);
  });

  it("begins with sulfuric acid, which never goes straight into oil", () => {
    expect(cautions[0]).toBe(caution("sulfuricAcid"));
    for (const each of cautions)
      expect(each).not.toMatch(/acid[^.]*into (?:methanol or )?oil slowly/);
  });

  it.each(works.map((work) => [work]))("has three for %s, all of the list", (work) => {
    const three = cautionsFor(work);
    expect(three).toHaveLength(3);
    for (const each of three) expect(cautions).toContain(each);
  });

  it("shows each work what hurts in it", () => {
    const said = (work: (typeof works)[number]): string => cautionsFor(work).join(" ");
    expect(said("acid step")).toMatch(/small portions into cold methanol/);
    expect(said("heating")).toMatch(/work alone.*children.*extinguisher.*erupts.*heating alone/);
    expect(said("mixing")).toMatch(/never the other way round.*45 °C.*motor.*numbs/);
    expect(said("methanol")).toMatch(/200 ppm.*motor.*plastic/i);
    expect(said("dosing")).toMatch(/not a permission.*to methanol.*base warms methanol.*motor/i);
    expect(said("draining")).toMatch(/crude fuel.*drain.*weld/);
    expect(said("titrating")).toMatch(/carcinogen.*15 minutes.*not a permission/);
    expect(said("testing fuel")).toMatch(/carcinogen.*15 minutes.*crude fuel/i);
    expect(said("planning")).toMatch(/not a permission.*work alone.*duty.*at home/);
  });
});

describe("every place that shows cautions draws from the list", () => {
  it("whole: the README, the help page, the guide of a first titration", () => {
    const readme = readFileSync(join(root, "README.md"), "utf8");
    const site = helpSite(catalogue);
    for (const each of cautions) {
      expect(readme).toContain(`- ${each}\n`);
      expect(plainOf(site["cautions.html"] ?? "")).toContain(each);
      expect(plainOf(site["first-titration.html"] ?? "")).toContain(each);
    }
  });

  it("whole: the sheet to print and the sheets of a sample", async () => {
    const card = await cardOf(slipwayBatch, "metric");
    const [start] = sampleLogbook().sheets;
    for (const sheet of [card, start, cautionsSheet]) {
      if (!sheet) throw new Error("no sheet");
      // a batch needs no gas test of water, and its page has no room for one
      const said = sheet === card ? batchCautions : cautions;
      for (const each of said) expect(textOf(sheet)).toContain(each);
    }
    expect(cautions.length - batchCautions.length).toBe(1);
  });

  it.each([
    ["BATCH", "dosing", [100, 5, "KOH", 90, 1]],
    ["PRETREATMENT", "acid step", [100, 20, "KOH", 90]],
  ] as const)("%s says the three that fit, and where all of them stand", (id, work, given) => {
    const seen = call(id, ...given);
    if ("error" in seen) throw new Error(seen.message);
    const rows = (seen.value as unknown[][]).filter(([label]) => label === "Caution");
    const words = rows.map(([, said]) => String(said));
    expect(words.slice(0, 3)).toEqual(cautionsFor(work));
    expect(words.slice(3)).toEqual([
      expect.stringContaining(`All ${String(cautions.length)} cautions`),
    ]);
  });

  it("and no text of ours has a caution of its own", () => {
    const own = filesUnder("src")
      .filter(({ path }) => path !== "src/core/batch/cautions.ts")
      .flatMap((file) => {
        const strings = codeOf(file).matchAll(
          /"((?:[^"\\\n]|\\.)*)"|`((?:[^`\\]|\\.)*)`|>([^<>{}]+)</g,
        );
        return [...strings]
          .map(([, double, back, between]) => double ?? back ?? between ?? "")
          .filter(worded)
          .map((text) => `${file.path}: ${text}`);
      });
    expect(own).toEqual([]);
  });

  it("nor has the README outside its list", () => {
    const readme = readFileSync(join(root, "README.md"), "utf8");
    const outside = readme.replace(/<!-- cautions:[\s\S]*<!-- end of cautions -->/, "");
    expect(outside.split("\n").filter(worded)).toEqual([]);
  });
});
