import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exact } from "../../../src/core/exact/exact";
import { amountUnitNamed } from "../../../src/core/quantity/units";
import { cardSteps, cardTroubles } from "../../../src/core/card/steps";
import { placesFor, shownIn } from "../../../src/core/card/shown";
import {
  cardUnits,
  cardUnitsFor,
  type Counted,
  formsOf,
  readForm,
} from "../../../src/core/card/units";

const shown = (units: (typeof cardUnits)[number], counted: Counted, amount: number): string[] =>
  formsOf(units, counted).map((form) => shownIn(form, exact(amount)));

describe("an amount on the card", () => {
  it("is shown in the person's own unit first, and as the sheet counts it below", () => {
    // 52.0 / 3.785411784 = 13.7370; 52.0 / 4.54609 = 11.4384
    expect(shown("metric", "L", 52)).toEqual(["52.00 L"]);
    expect(shown("us", "L", 52)).toEqual(["13.74 US gal", "52.00 L"]);
    expect(shown("imperial", "L", 52)).toEqual(["11.44 imperial gal", "52.00 L"]);
  });

  it("comes to whole pounds and the ounces over", () => {
    // 1287 / 28.349523125 = 45.3976 oz; 91.5 kg = 3227.57 oz = 201 lb 11.6 oz
    expect(shown("us", "g", 1287)).toEqual(["2 lb 13.4 oz", "1287 g"]);
    expect(shown("imperial", "kg", 91.5)).toEqual(["201 lb 11.6 oz", "91.50 kg"]);
    expect(shown("imperial", "g", 1287)).toEqual(["2 lb 13.4 oz", "1287 g"]);
    expect(shown("us", "kg", 91.5)).toEqual(["201 lb 11.6 oz", "91.50 kg"]);
    expect([shown("metric", "g", 1287), shown("metric", "kg", 91.5)]).toEqual([
      ["1287 g"],
      ["91.50 kg"],
    ]);
    // a tenth below a pound rounds up to one, never to sixteen ounces
    expect(shown("us", "g", 453.58)[0]).toBe("1 lb 0.0 oz");
  });

  it("is the same amount in every unit, to a tenth of an ounce or four digits", () => {
    const gallons = { us: 3.785411784, imperial: 4.54609 } as const;
    const amounts = fc.double({ min: 0.01, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(amounts, fc.constantFrom("us" as const, "imperial" as const), (value, units) => {
        const [volume = ""] = shown(units, "L", value);
        expect(Math.abs((Number.parseFloat(volume) * gallons[units]) / value - 1)).toBeLessThan(
          6e-4,
        );
        const [, pounds = "", ounces = ""] =
          /^(\d+) lb (\d+\.\d) oz$/.exec(shown(units, "g", value)[0] ?? "") ?? [];
        expect(Number(ounces)).toBeLessThan(16);
        const grams = Number(pounds) * 453.59237 + Number(ounces) * 28.349523125;
        expect(Math.abs(grams - value)).toBeLessThan(1.42);
      }),
      { numRuns: 50 },
    );
  });

  it("is shown by four digits, six decimals at most, and never fewer digits than stand before the point", () => {
    const places = (figure: string) => placesFor(exact(figure));
    expect(["0", "1", "9.99", "10", "99.9", "100", "999.9", "1000", "54321"].map(places)).toEqual([
      3, 3, 3, 2, 2, 1, 1, 0, 0,
    ]);
    const small = ["0.999", "0.1", "0.099", "0.01", "0.0099", "0.001", "0.00099", "0.0000001"];
    expect(small.map(places)).toEqual([4, 4, 5, 5, 6, 6, 6, 6]);
  });

  it("stands in grams and kilograms first where the scale says grams, and in pounds behind them", () => {
    expect(shown("us, grams", "g", 1287)).toEqual(["1287 g", "2 lb 13.4 oz"]);
    expect(shown("imperial, grams", "kg", 91.5)).toEqual(["91.50 kg", "201 lb 11.6 oz"]);
    expect(shown("us, grams", "L", 52)).toEqual(["13.74 US gal", "52.00 L"]);
    expect(shown("imperial, grams", "L", 52)).toEqual(["11.44 imperial gal", "52.00 L"]);
  });

  // By hand: 453.59237 g are a pound, 28.349523125 g an ounce.
  it("is read off a scale in ounces below a pound, in pounds from one on, and as it is in grams", () => {
    const [pounds] = formsOf("us", "g");
    const [grams] = formsOf("metric", "g");
    if (!pounds || !grams) throw new Error("no form");
    const read = (amount: string) => readForm(pounds, exact(amount));
    const [below, one] = [read("453.59236"), read("453.59237")];
    expect([below.unit, below.look, below.per.toString()]).toEqual([
      "oz",
      "figure",
      "28.349523125",
    ]);
    expect([one.unit, one.look, one.per.toString()]).toEqual(["lb", "figure", "453.59237"]);
    expect(readForm(grams, exact(1000))).toBe(grams);
  });

  it("stands in the units of who measures oil so, and no gallon is just a gallon", () => {
    const of = (name: string) => cardUnitsFor(amountUnitNamed(name));
    expect(["us_gal", "uk_gal", "lb", "l", "kg"].map(of)).toEqual([
      "us",
      "imperial",
      "us",
      "metric",
      "metric",
    ]);
    const units = cardUnits.flatMap((each) => formsOf(each, "L").map(({ unit }) => unit));
    expect(units.filter((unit) => unit === "gal")).toEqual([]);
  });
});

describe("the steps of the card", () => {
  const at = (id: string): number => cardSteps.findIndex((step) => step.id === id);

  it("go in the order that keeps people whole: lye into methanol, and that into oil that has cooled", () => {
    const order = ["dry", "methanol", "lye", "dissolve", "mix", "settle", "drain", "wash"].map(at);
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(order).not.toContain(-1);
    expect(cardSteps[at("dissolve")]?.when).toMatch(/below 45 °C/);
    expect(cardSteps[at("dry")]?.when).toMatch(/55 °C/);
  });

  it("try a new lot before anything is mixed for all of it", () => {
    expect(at("trial")).toBeGreaterThan(-1);
    expect(at("trial")).toBeLessThan(at("methanol"));
  });

  it("say how the vessel stays warm where its caution forbids a heater", () => {
    const warm = cardSteps.filter(
      ({ when, caution }) => /°C/.test(when) && /No heater/.test(caution),
    );
    expect(warm.map(({ id }) => id)).toEqual(["stir"]);
    for (const { words } of warm) expect(words).toMatch(/lag the vessel.*hot water around it/);
  });

  it("have a caution each, and weigh oil, methanol and lye once", () => {
    for (const { caution } of cardSteps) expect(caution.length).toBeGreaterThan(10);
    const weighed = cardSteps.flatMap(({ weighs }) => weighs ?? []);
    expect(weighed).toEqual(["oil", "methanol", "lye"]);
    expect(cardSteps.filter((step) => "weighs" in step).map(({ id }) => id)).toEqual(weighed);
  });

  it("are these, some of them so warm or so long", () => {
    expect(cardSteps.map(({ id, when }) => `${id}: ${when}`)).toEqual([
      "oil: ",
      "dry: to 55 °C",
      "trial: ",
      "methanol: cold",
      "lye: ",
      "dissolve: below 45 °C: stop, wait, go on",
      "mix: oil at 50 to 55 °C",
      "stir: 1 hour at 50 to 55 °C",
      "settle: 8 hours or longer",
      "drain: ",
      "tried: at 20 °C, look after 10 minutes",
      "wash: ",
      "fuel: ",
    ]);
  });

  it("are followed by what may go wrong, people first", () => {
    expect(cardTroubles.map(({ seen }) => seen)).toEqual([
      "On skin, in eyes",
      "Swallowed, breathed in",
      "Fire",
      "Methanol above 45 °C",
      "Oil above 55 °C",
      "No layer after 8 hours, or jelly",
      "Oil in the methanol trial",
      "Wash turns to cream",
    ]);
  });
});
