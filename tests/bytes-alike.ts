/** Files are compared byte by byte at once; `toEqual` would look at each byte as at a value of its own. */
import { expect } from "vitest";

expect.addEqualityTesters([
  (one: unknown, other: unknown) =>
    one instanceof Uint8Array && other instanceof Uint8Array
      ? one.constructor === other.constructor && Buffer.compare(one, other) === 0
      : undefined,
]);
