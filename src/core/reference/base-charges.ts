/**
 * Base charges in use: lye for the reaction alone, beside what the acid takes. None of them is ever
 * taken for granted; they are shown with their sources, to choose from. All are of pure base.
 */
import type { Base } from "./bases";
import type { SourceId } from "./sources";

export interface PublishedCharge {
  readonly base: Base["name"];
  readonly amount: string;
  readonly unit: "%" | "g/L";
  /** What it was found for. */
  readonly about: string;
  readonly source: SourceId;
}

const charge = (
  base: Base["name"],
  amount: string,
  unit: PublishedCharge["unit"],
  about: string,
  source: SourceId,
): PublishedCharge => ({ base, amount, unit, about, source });

export const publishedCharges: readonly PublishedCharge[] = [
  charge(
    "KOH",
    "7",
    "g/L",
    "the usual charge, often written 7 to 8 for 85 to 90 % lye",
    "practice",
  ),
  charge("KOH", "1", "%", "refined oil", "vanGerpen"),
  charge("NaOH", "0.3", "%", "most active on tallow", "ma"),
  charge("NaOH", "3.5", "g/L", "the older charge", "practice"),
  charge("NaOH", "5", "g/L", "the usual charge", "practice"),
  charge("NaOH", "1", "%", "refined oil at 6 to 1 and 60 C", "freedman"),
  charge("NaOCH3", "0.25", "%", "refined oil, the lower end", "vanGerpen"),
  charge("NaOCH3", "0.5", "%", "refined oil at 6 to 1 and 60 C", "freedman"),
  charge("NaOCH3", "0.5", "%", "most active on tallow", "ma"),
];
