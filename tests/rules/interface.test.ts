import { describe, expect, it } from "vitest";
import { catalogue } from "../../src/functions/catalogue";
import { functionsJson } from "../../src/functions/metadata";
import { functionIds } from "../../src/functions/names";
import { publicInterface } from "./public-interface";

const metadata = functionsJson(catalogue, "https://localhost:3001/");
const entries = metadata.functions.map(
  (entry, index) => [entry.id, entry, catalogue[index]] as const,
);

describe("functions.json", () => {
  it("turns on both data-type flags", () => {
    expect(metadata.allowCustomDataForDataTypeAny).toBe(true);
    expect(metadata.allowErrorForDataTypeAny).toBe(true);
  });

  it("lists the functions of the public interface in its order, and no other", () => {
    expect(metadata.functions.map((entry) => entry.id)).toEqual(Object.keys(publicInterface));
  });

  it("lists the names that whatever reads formulas goes by", () => {
    expect(catalogue.map(({ id }) => id)).toEqual(functionIds);
  });

  it.each(entries)("%s has the arguments of the public interface", (id, entry, definition) => {
    const written = (definition?.arguments ?? []).map((argument, index) => {
      const parameter = entry.parameters[index];
      const list = parameter?.dimensionality === "matrix" ? ":list" : "";
      return parameter?.optional ? `[${argument.name}${list}]` : `${argument.name}${list}`;
    });
    expect(written.join(", ")).toBe(publicInterface[id]);
    for (const parameter of entry.parameters) expect(parameter.type).toBe("any");
  });

  it.each(entries)("%s has a name that no program takes for a cell or glues to another", (id) => {
    expect(id).toMatch(/^[A-Z]{3,}$/);
    expect(id).not.toMatch(/^[A-Z]{1,3}\d+$/);
  });

  it.each(entries)("%s is described in one line of at most 120 characters", (_, entry) => {
    for (const text of [entry.description, ...entry.parameters.map((p) => p.description)]) {
      expect(text.length).toBeGreaterThan(5);
      expect(text).not.toContain("\n");
    }
    expect(entry.description.length).toBeLessThanOrEqual(120);
  });

  it.each(entries)(
    "%s names the unit of each figure in the argument's shown name",
    (_, entry, def) => {
      expect(def).toBeDefined();
      for (const [index, argument] of (def?.arguments ?? []).entries()) {
        const name = entry.parameters[index]?.name ?? "";
        expect(name).toMatch(/^[a-zA-Z]+$/);
        expect(name.startsWith(argument.name)).toBe(true);
        if (argument.unit === "g") expect(name).toMatch(/Grams$/i);
        if (argument.unit === "%") expect(name).toMatch(/Percent$/);
      }
    },
  );
});
