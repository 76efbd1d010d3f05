import { describe, expect, it } from "vitest";
import { catalogue } from "../../src/functions/catalogue";
import { twinOf, twins } from "../../src/partner/twins/twins";
import { filesUnder, importsOf } from "../rules/sources-of";

describe("the plain-formula twins", () => {
  it("are there for every function, one each, and for nothing else", () => {
    expect(Object.keys(twins).sort()).toEqual(catalogue.map(({ id }) => id).sort());
    for (const { id } of catalogue)
      expect(twinOf(`titre.${id.toLowerCase()}`)).toBeTypeOf("function");
    expect(twinOf("SUM")).toBeUndefined();
  });

  it("stay out of functions.js: nothing but themselves imports them there", () => {
    const importers = filesUnder("src/functions").filter(
      (file) =>
        !file.path.startsWith("src/partner/twins/") &&
        importsOf(file).some((target) => target.startsWith("src/partner/twins")),
    );
    expect(importers.map(({ path }) => path)).toEqual([]);
  });
});
