/** Also said alone, where an acid step is worked out. */
export const acidCaution =
  "Sulfuric acid: slowly into methanol or oil. Never water into acid, never acid onto lye.";

/**
 * The usual cautions, said the same wherever a dose is shown (common practice, no source, unless
 * named). They defer: to the safety data sheet, to local rules, to qualified advice.
 */
export const cautions: readonly string[] = [
  "A result is not a permission. Follow the safety data sheet of the lot in hand, local fire, environmental and fuel-excise rules, and a qualified person's advice.",
  "Drain settled water and dry the oil by heating it slowly: water under hot oil erupts. Let it cool to about 55 °C, below methanol's boiling point, before methoxide goes in.",
  "Methanol is poisonous by mouth, breath and skin, and burns with a flame that is hard to see. No flame, spark or hot surface near it; earth metal vessels before pouring. Swallowed or breathed in: medical help at once, even when feeling well.",
  "Add base to methanol in small portions, never the other way round, in a vented vessel with its lid on, and never in aluminium, zinc or tin. Solid methoxide heats itself in air.",
  acidCaution,
  "Wear goggles and the gloves that the safety data sheets name: thin ones let methanol through. Eyes and skin: rinse with water for 15 minutes or longer, never with vinegar, and get medical help.",
  "Glycerol and wash water hold methanol, base and soap: none of it down a drain without permission. Oily rags heat themselves and catch fire: keep them wet, in a metal bin with a lid.",
  "For a new lot, run a one-litre trial before the vessel.",
];
