/** Why a formula cannot be written in plain functions; travels as an exception inside this folder. */
export class NoTwin extends Error {
  constructor(
    /** Completes "Left as it is: ...". */
    readonly reason: string,
    /** It is a sentence that has no formula, part of something larger. */
    readonly isSentence = false,
  ) {
    super(reason);
  }
}

export function noTwin(reason: string): never {
  throw new NoTwin(reason);
}
