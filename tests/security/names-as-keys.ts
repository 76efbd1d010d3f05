/** Names that mean something to the language itself, and so must never be looked up in an object of ours. */
export const namesOfObjects = [
  "__proto__",
  "constructor",
  "toString",
  "valueOf",
  "hasOwnProperty",
] as const;
