/** A place among the tokens that matter, and how to say that they stop making sense there. */
import type { FormulaTrouble } from "../../core/problem/formula-troubles";
import { problem, type Problem } from "../../core/problem/problem";
import type { Token } from "./token";

export class Cursor {
  private readonly tokens: readonly Token[];
  private position = 0;

  constructor(
    tokens: readonly Token[],
    private readonly length: number,
  ) {
    this.tokens = tokens.filter(({ kind }) => kind !== "space" && kind !== "equals-sign");
  }

  /** The token to be read next. */
  get here(): Token | undefined {
    return this.tokens[this.position];
  }

  /** Where the next token starts; at the end, where the text ends. */
  get start(): number {
    return this.here?.start ?? this.length;
  }

  /** Where the last token read ended. */
  get end(): number {
    return this.tokens[this.position - 1]?.end ?? 0;
  }

  /** Is there a space before the next token? Between references it means what they share. */
  get isSpaced(): boolean {
    return this.start > this.end;
  }

  advance(): void {
    this.position += 1;
  }

  isAt(sign: string): boolean {
    return this.here?.kind === "operator" && this.here.text === sign;
  }

  /** Does a sign stand after the next token? */
  isFollowedBy(sign: string): boolean {
    const after = this.tokens[this.position + 1];
    return after?.kind === "operator" && after.text === sign;
  }

  /** Step over a sign if it is there. */
  take(sign: string): boolean {
    const there = this.isAt(sign);
    if (there) this.advance();
    return there;
  }

  /** The formula makes no sense at a token; by default, at the next one. */
  broken(trouble: FormulaTrouble, token: Token | undefined = this.here): Problem {
    return problem({
      code: "broken-formula",
      trouble,
      at: (token?.start ?? this.length) + 1,
      found: token?.text ?? "",
    });
  }
}
