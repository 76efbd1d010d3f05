import { createElement } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { Together } from "../../../src/taskpane/widgets/together";

const shown = (text: string): string => renderToStaticMarkup(createElement(Together, null, text));
const kept = (text: string): string[] =>
  [...shown(text).matchAll(/<span[^>]*>([^<]*)<\/span>/g)].map(([, piece = ""]) => piece);

describe("text in which a figure keeps its unit", () => {
  it.each([
    ["The mean is 2.450 mL.", ["2.450 mL"]],
    ["Acid: 0.90 ± 0.06 % FFA, acid value 1.79 mg KOH/g.", ["0.90 ± 0.06 % FFA", "1.79 mg KOH/g"]],
    ["7 g/L pure is 8.2 g/L of an 85 % one", ["7 g/L", "8.2 g/L", "85 %"]],
    ["suspect (G 1.7805, limit 1.7150 at 95 %)", ["G 1.7805", "95 %"]],
    ["1286 g ± 20 g from the titration.", ["1286 g", "± 20 g"]],
    ["Left empty: 20 °C.", ["20 °C"]],
    ["Left empty: 68 °F.", ["68 °F"]],
  ])("keeps together in “%s”: %j", (text, pieces) => {
    expect(kept(text)).toEqual(pieces);
  });

  it("leaves alone what only begins like a unit, and says every letter of it", () => {
    const text = "3 lots, 2 going on, 5 litres of lot 4";
    expect(kept(text)).toEqual([]);
    expect(shown(text)).toBe(text);
    expect(shown("at 20 °C: weigh 10 g").replace(/<[^>]*>/g, "")).toBe("at 20 °C: weigh 10 g");
  });
});
