/** What is taken where nothing is said. */
import { quantity } from "../quantity/quantity";

export const usual = {
  /** % FFA as oleic above which no dose is given (source: vanGerpen, commonly cited). */
  limitFfa: quantity("%", "5"),
  /** Twice the three moles that the reaction takes (source: freedman, commonly cited). */
  molarRatio: quantity("mol/mol", "6"),
  /** Of intervals and of the outlier test (common practice, no source). */
  confidence: quantity("%", "95"),
  /** Of sulfuric acid as it is sold (common practice, no source). */
  acidAssay: quantity("%", "96"),
  /** Of potassium hydrogen phthalate for standards (common practice, no source). */
  phthalatePurity: quantity("%", "100"),
  /** +- of the same, percent (QUAM:2012, example A2: 100.0 % +- 0.05 %). */
  phthalateLimits: quantity("%", "0.05"),
  /** Of a new value in a weighted mean (NIST/SEMATECH e-Handbook 6.3.2.4: 0.2 to 0.3). */
  controlWeight: quantity("fraction", "0.2"),
} as const;
