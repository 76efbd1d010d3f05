/**
 * The names of our functions and nothing else: what reads, writes or compares formulas needs to know
 * which names are ours, and not what they work out. `tests/rules/interface.test.ts` holds the catalogue
 * to this list.
 */

/** In a cell every function is called TITRE.ID. */
export const namespace = "TITRE";

/** The answer of each function: one cell, or a table that spills. In the order they are shown. */
const answers = {
  CORRECTED: "cell",
  ACIDVALUE: "cell",
  FFAPERCENT: "cell",
  FFAFROMACIDVALUE: "cell",
  ACIDVALUEFROMFFA: "cell",
  MEANACIDVALUE: "cell",
  EACHACIDVALUE: "table",
  PERLITRE: "cell",
  MOLARITY: "cell",
  TITRANTMASS: "cell",
  MOLARITYFROMKHP: "cell",
  TEMPERATURECORRECTED: "cell",
  SAMPLETOWEIGH: "cell",
  SAMPLEGRAMS: "cell",
  OILMASS: "cell",
  CHARGEPERCENT: "cell",
  MOLARRATIO: "cell",
  OUTLIERS: "table",
  VERDICT: "cell",
  CONCORDANT: "cell",
  SPREAD: "table",
  REPLICATES: "cell",
  FFAUNCERTAINTY: "cell",
  BUDGET: "table",
  NEUTRALISER: "cell",
  CATALYST: "cell",
  CATALYSTFROMFFA: "cell",
  DOSE: "cell",
  METHANOL: "cell",
  SOAP: "cell",
  BLEND: "cell",
  BLENDEDACIDVALUE: "cell",
  ROUTE: "cell",
  PRETREATMENT: "table",
  BATCH: "table",
  WHATIF: "table",
  CHECKS: "table",
  ACIDVALUEUNCERTAINTY: "cell",
  KHPUNCERTAINTY: "cell",
  USUALSCATTER: "cell",
  USUALFREEDOM: "cell",
  STRENGTHON: "table",
  CONTROL: "table",
  CONTROLFLAGS: "table",
  AGAINSTLIMIT: "cell",
  FUELSOAP: "cell",
  FUELCATALYST: "cell",
  FUELMETAL: "cell",
  GLYCEROL: "cell",
  CONVERSION: "cell",
  LOSSONHEATING: "cell",
  WATERFROMGAS: "cell",
  WATERBALANCE: "table",
  TEMPERATURERISE: "cell",
  ENDPOINT: "cell",
  STEEPNESS: "table",
} as const satisfies Record<string, "cell" | "table">;

export type FunctionId = keyof typeof answers;

/** Does a function of ours answer with a table? No, where there is none of that name. */
export const spills = (id: string): boolean =>
  Object.hasOwn(answers, id) && answers[id as FunctionId] === "table";

export const functionIds = Object.keys(answers) as readonly FunctionId[];
