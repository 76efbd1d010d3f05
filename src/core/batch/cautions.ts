/**
 * The usual cautions, said the same wherever a dose is shown (common practice, no source, unless
 * named). They defer: to the safety data sheet, to local rules, to qualified advice.
 */
export const cautions: readonly string[] = [
  "A result is not a permission. Follow the safety data sheet of the lot in hand, local fire, environmental and fuel-excise rules, and a qualified person's advice.",
  "Drain settled water and dry the oil by heating it slowly: water under hot oil erupts. Let it cool to about 55 C, below methanol's boiling point, before methoxide goes in.",
  "Methanol is poisonous by mouth, breath and skin, and burns with a flame that is hard to see. Add base to methanol in small portions, in a vented vessel with its lid on, away from any spark. Solid methoxide heats itself in air.",
  "Acid: never water into acid, never acid onto lye.",
  "Eyes and skin: rinse with water for 15 minutes or longer, never with vinegar, and get medical help.",
  "For a new lot, run a one-litre trial before the vessel.",
];
