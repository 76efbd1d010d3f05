/** What is taken where nothing is said. */
import { quantity } from "../quantity/quantity";

export const usual = {
  /** % FFA as oleic above which no dose is given (source: vanGerpen, commonly cited). */
  limitFfa: quantity("%", "5"),
  /** Twice the three moles that the reaction takes (source: vanGerpen, commonly cited). */
  molarRatio: quantity("mol/mol", "6"),
  /** Of intervals and of the outlier test (common practice, no source). */
  confidence: quantity("%", "95"),
  /** Of sulfuric acid as it is sold (common practice, no source). */
  acidAssay: quantity("%", "96"),
  /** Of potassium hydrogen phthalate for standards (common practice, no source). */
  phthalatePurity: quantity("%", "100"),
} as const;
