/**
 * Why something was not done, in a sentence for the person: what happened and what to do. Nothing goes
 * by what is in it; what a caller must tell apart is a fault or a problem, with a code.
 */
export interface Refusal {
  readonly kind: "refused";
  readonly sentence: string;
}

export const refused = (sentence: string): Refusal => ({ kind: "refused", sentence });

export const isRefused = (value: object): value is Refusal =>
  "kind" in value && value.kind === "refused";
