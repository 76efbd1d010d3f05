/** What the program is told before it loads our code, typed by hand: units in names, and what may be left out. */
import { describe, expect, it } from "vitest";
import { catalogue } from "../../src/functions/catalogue";
import { described, functionsJson, shownName } from "../../src/functions/metadata";
import { goodArguments } from "./good-arguments";
import { outcome } from "./outcome";

const everyArgument = catalogue.flatMap((entry) =>
  entry.arguments.map((argument, position) => ({ entry, argument, position })),
);

/** How a name ends when its figure has this unit. */
const endings: Record<string, RegExp> = {
  mL: /Ml$/,
  L: /Litres$/,
  g: /Grams$/,
  kg: /Kg$/,
  "mol/L": /MolPerLitre$/,
  "g/L": /gramsPerLitre$/i,
  "mg KOH/g": /MgKohPerGram$/,
  "mg/kg": /MgPerKg$/,
  kPa: /Kilopascals$/,
  "%": /Percent$/,
  C: /Celsius$/,
};

describe("the name shown while typing", () => {
  it.each(everyArgument)("$entry.id: $argument.name ends in its unit, once", ({ argument }) => {
    const ending = argument.words ? undefined : endings[argument.unit];
    const shown = shownName(argument);
    if (ending) expect(shown).toMatch(ending);
    else expect(shown).toBe(argument.name);
    expect(shown).not.toMatch(/(percent|litre|grams)\1/i);
  });

  it("is met with every unit that has an ending", () => {
    const units = everyArgument.flatMap(({ argument }) => (argument.words ? [] : [argument.unit]));
    expect(new Set(units)).toEqual(new Set([...Object.keys(endings), "mol/mol", "fraction"]));
  });
});

describe("an entry of functions.json", () => {
  const json = functionsJson(catalogue, "https://a.example/b/");
  const { functions } = json;

  it("takes any kind of cell, and stands where errors and rich values come through", () => {
    expect([json.allowCustomDataForDataTypeAny, json.allowErrorForDataTypeAny]).toEqual([
      true,
      true,
    ]);
    const types = functions.flatMap(({ parameters }) => parameters.map(({ type }) => type));
    expect(new Set(types)).toEqual(new Set(["any"]));
  });

  it.each(everyArgument)("says of $entry.id whether $argument.name may be left out", (one) => {
    const { entry, argument, position } = one;
    const given = functions.find(({ id }) => id === entry.id)?.parameters[position];
    const isNeeded = argument.whenLeftOut === undefined;
    if (isNeeded) expect(given?.description).toBe(argument.says);
    // a program asks for those in front of one that is needed
    const isInFront = entry.arguments
      .slice(position)
      .some(({ whenLeftOut }) => whenLeftOut === undefined);
    expect(given?.optional).toBe(!isInFront);
  });

  it.each(functions)("of $id has its help page and the shape of its answer", (entry) => {
    expect(entry.helpUrl).toBe(`https://a.example/b/help/${entry.id.toLowerCase()}.html`);
    const found = catalogue.find(({ id }) => id === entry.id);
    const answer = found && outcome(found, goodArguments(entry.id));
    const isRange = answer && "value" in answer && Array.isArray(answer.value);
    expect(entry.result).toEqual({ type: "any", dimensionality: isRange ? "matrix" : "scalar" });
  });
});

/** What leaving an argument out means, where that is no figure and no word the argument takes. */
const meanings: Record<string, unknown> = {
  "the solvent was neutralised beforehand": "neutralised",
  "0.915 kg/L, triolein": 0.915,
  "20 C": 20,
  "the coarsest usual step that fits all readings as typed": 0.05,
  "the coarsest usual step that fits all values as typed": 0.01,
  "one sample mass served all": "nothing",
  "one sample mass served all titres of a row": [[7], [7], [7]],
  "no blanks are counted": [["neutralised"], ["neutralised"], ["neutralised"]],
  "the record is not used": "nothing",
  "no acid": "nothing",
  "not measured": "nothing",
  "all of them": 6,
  "no free base was found": "none",
  "the methanol is taken to be dry": "nothing",
};

describe("an argument that is left out", () => {
  const some = everyArgument.filter(({ argument }) => argument.whenLeftOut !== undefined);

  it.each(some)("$entry.id: $argument.name is told to be what it then is", (one) => {
    const { entry, argument, position } = one;
    const says = argument.whenLeftOut ?? "";
    expect(described(argument)).toBe(`${argument.says} Left out: ${says}.`);
    const isWord = argument.words?.includes(says) ?? false;
    const meaning = isWord ? says : Number.isNaN(Number(says)) ? meanings[says] : Number(says);
    expect(meaning, says).toBeDefined();
    // 0 is never a value, and readings on their own masses are spoken of in other words
    if (meaning === "nothing" || meaning === 0) return;
    const withIt = (value: unknown) => {
      const given = [...goodArguments(entry.id)];
      given[position] = value;
      return outcome(entry, given);
    };
    expect(withIt(null)).toHaveProperty("value");
    expect(withIt(meaning)).toEqual(withIt(null));
  });

  it("is of every kind named here", () => {
    const said = new Set(some.map(({ argument }) => argument.whenLeftOut ?? ""));
    expect(Object.keys(meanings).filter((each) => !said.has(each))).toEqual([]);
  });
});
