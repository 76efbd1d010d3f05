import { describe, expect, it } from "vitest";
import { problem } from "../../../src/core/problem/problem";
import { say } from "../../../src/core/problem/wording";

describe("the sentence about a text where a number belongs", () => {
  const wrong = { code: "not-a-number", argument: "mass", given: '"10 g"' } as const;

  it("ends with what to type instead", () => {
    expect(say(problem({ ...wrong, hint: "type the number alone, 10" }))).toBe(
      'mass must be a number, and "10 g" is not one: type the number alone, 10.',
    );
  });

  it("ends there when nothing can be said of it", () => {
    expect(say(problem({ ...wrong, hint: "" }))).toBe(
      'mass must be a number, and "10 g" is not one.',
    );
  });
});
