/**
 * The cautions, each said once: README, help, the pane, the functions' rows, printed sheets and samples
 * all draw from this list (tests/rules/cautions.test.ts). Common practice, no source, unless one stands
 * right behind what it says. They defer: to the safety data sheet, to local rules, to qualified advice.
 */
import { sources } from "../reference/sources";

/** The list, in the order in which it is printed. */
const facts = {
  sulfuricAcid:
    "Sulfuric acid goes in small portions into cold methanol, stirred and kept below about 40 °C; then that mixture goes into oil below about 55 °C. Concentrated acid chars warm oil, and spits. Never water into acid, never acid onto lye.",
  permission:
    "A result is not a permission. Follow the safety data sheet of the lot in hand, local fire, environmental and fuel-excise rules, and a qualified person's advice.",
  company:
    "Never work alone; children stay out. An alcohol-resistant extinguisher and an eyewash stand at the door. Nothing goes into food bottles.",
  acidProof:
    "An acid step needs a vessel that acid does not attack: no mild steel, zinc or aluminium. The layer that is drained off is corrosive, poisonous and flammable at once.",
  drying:
    "Drain settled water and dry the oil by heating it slowly: water under hot oil erupts. Let it cool to about 55 °C, below methanol's boiling point, before methoxide goes in.",
  heaters: `Never leave oil heating alone: a heater left on burned a shed down (${sources.mmwr}). An element bared by a falling level sets oil alight: fit a thermostat and a cut-out. No heater in a vessel that ever holds methanol.`,
  intoMethanol:
    "Add base to methanol, or to a titrant's solvent, in small portions, never the other way round, in a vented vessel with its lid on. Base warms methanol. Keep it below 45 °C: stop, wait until it is cool, go on. A vessel gets warmer than a small trial.",
  lye: "Lye burns skin and blinds; methoxide catches fire and poisons as well, and numbs what it hurts. Goggles, long gloves, apron. No aluminium, zinc or tin: lye makes hydrogen there. Solid methoxide heats itself in air.",
  vapour: `Methanol lights at about 11 °C, its vapour burns from 6 to 36 % in air, and its flame is hard to see (${sources.methanolVapour}). Where it is open: no flame, spark or hot surface, no drill, brushed motor, plug or switch. Outdoors, or with fresh air forced along the floor; smell is no warning.`,
  methanol: `Methanol is poisonous by mouth, breath and skin, and harm shows hours later. Over a working day, air may hold at most 200 ppm of it (${sources.methanolLimit}). Swallowed, breathed in, soaked through clothes: medical help at once, even when feeling well.`,
  plastic:
    "Plastic cannot be earthed, softens with heat, and feeds a fire. Use stainless steel vessels, and earth them before pouring.",
  crudeFuel:
    "Until their methanol is washed out or drawn off, crude fuel and glycerol catch fire as methanol does. Drawing it off by heat or vacuum takes a condenser, a vent led away and no flame; a drum under vacuum collapses.",
  waste:
    "Glycerol, wash water and what was titrated hold solvent, base and soap: none of it down a drain without permission. Oily rags heat themselves and catch fire: keep them wet, in a metal bin with a lid.",
  welding: "Never weld, cut or grind a vessel that has held fuel or methanol.",
  bench:
    "At the bench: titrant burns skin and eyes, and its solvent catches fire. Goggles and gloves on, no flame or bare hotplate near. Phenolphthalein is classed as a carcinogen (commonly cited): drops only, no bare skin.",
  hydride:
    "Calcium hydride and water make hydrogen, which a spark lights: a vessel rated for the pressure, with a relief, behind a shield, vented outdoors.",
  eyes: "Wear goggles and the gloves that the safety data sheets name: thin ones let methanol through. Eyes and skin: rinse with water for 15 minutes or longer, never with vinegar, and get medical help.",
  law: `Used oil is waste in many places: its carriers may need a licence, rules for animal by-products may apply, and its fuel may owe duty. Tell insurer and landlord. Some authorities advise against making biodiesel at home: buy it from a licensed source (${sources.mmwr}). Hear yours first.`,
  trial: "For a new lot, run a one-litre trial before the vessel.",
} as const satisfies Record<string, string>;

export type CautionId = keyof typeof facts;

/** A longer list is not read. */
type Three = readonly [CautionId, CautionId, CautionId];

/** What is being done, and the three that matter most in it, the worst first. */
const fitting = {
  titrating: ["bench", "eyes", "permission"],
  "making titrant": ["intoMethanol", "bench", "eyes"],
  heating: ["company", "drying", "heaters"],
  mixing: ["intoMethanol", "vapour", "lye"],
  methanol: ["methanol", "vapour", "plastic"],
  dosing: ["permission", "intoMethanol", "vapour"],
  "acid step": ["sulfuricAcid", "permission", "acidProof"],
  draining: ["crudeFuel", "waste", "welding"],
  "testing fuel": ["bench", "eyes", "crudeFuel"],
  planning: ["permission", "company", "law"],
} as const satisfies Record<string, Three>;

export type Work = keyof typeof fitting;
export const works = Object.keys(fitting) as readonly Work[];

/** One caution, where its subject is spoken of. */
export const caution = (id: CautionId): string => facts[id];

/** A few words of it, for a step of the bench card: the whole stands on the page behind. */
const briefs = {
  permission: "A result is not a permission: the safety data sheet of the lot goes first.",
  company: "Not alone. Goggles, long gloves and apron on.",
  drying: "Water under hot oil erupts: slowly, and never leave it.",
  methanol: "Poisonous by breath and skin: harm shows hours later.",
  lye: "Lye burns skin and blinds. No aluminium, zinc or tin.",
  intoMethanol: "Never methanol onto lye. Vented, lid on. It gets hot.",
  trial: "For a new lot, run a one-litre trial before the vessel.",
  vapour: "No flame, spark, drill or switch near. Fresh air along the floor.",
  heaters: "No heater in a vessel that holds methanol.",
  plastic: "Steel, earthed: plastic softens and cannot be earthed.",
  crudeFuel: "Fuel and glycerol still catch fire as methanol does.",
  eyes: "Water for 15 minutes or longer, never vinegar. Medical help.",
  waste: "None of it down a drain without permission.",
  welding: "Never weld or cut a vessel that held fuel.",
} as const satisfies Partial<Record<CautionId, string>>;

export type BriefId = keyof typeof briefs;
export const brief = (id: BriefId): string => briefs[id];

/** All of them: for paper, and one press away elsewhere. */
export const cautions: readonly string[] = Object.values(facts);

/** Those of a batch as they are met, from the door to the barrel; an acid step, which few batches have, last. */
const asMet = [
  "permission",
  "company",
  "eyes",
  "trial",
  "drying",
  "heaters",
  "methanol",
  "vapour",
  "plastic",
  "lye",
  "intoMethanol",
  "crudeFuel",
  "waste",
  "welding",
  "bench",
  "law",
  "acidProof",
  "sulfuricAcid",
] as const satisfies readonly CautionId[];

/** Without that of a water test by gas. */
export const batchCautions: readonly string[] = asMet.map(caution);

/** The three for the work in hand. */
export const cautionsFor = (work: Work): readonly string[] => fitting[work].map(caution);

/** Said beside the list. */
export const aboutCautions = "Common practice, no source, unless one is named.";
