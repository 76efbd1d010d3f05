/**
 * How a cell comes to each published figure: by the add-in's functions where there is one, else by the
 * spreadsheet's own, over cells of the other sheets. Known by the words of the check.
 */
import { spreadCell } from "./spread-sheet";
import { uncertaintyCell } from "./uncertainty-sheet";
import { columnOf } from "./data-sheet";
import { numAcc4Cells } from "./num-acc4-sheet";

const perGramOfAcid = (base: string): string =>
  `=TITRE.NEUTRALISER(1,TITRE.ACIDVALUEFROMFFA(0.1,282.468),"${base}",100)`;

/** Student t out of a spread: half-width x square root of n, over s. */
const studentT = (set: string, count: number): string =>
  `=${spreadCell(set, "half-width")}*SQRT(${String(count)})/${spreadCell(set, "deviation")}`;

const textbook = columnOf("textbook");

export const liveFormulas: Readonly<Record<string, string>> = {
  "FFA from 10.00 mL of 0.1 mol/L on 28.2 g, %": "=TITRE.FFAPERCENT(10,0.1,28.2)",
  "FFA from 30.00 mL of 0.25 mol/L on 7.05 g, %": "=TITRE.FFAPERCENT(30,0.25,7.05)",
  "FFA from 12.50 mL of 1.0 mol/L on 3.525 g, %": "=TITRE.FFAPERCENT(12.5,1,3.525)",
  "acid value of 1 % FFA as oleic, mg KOH/g": "=TITRE.ACIDVALUEFROMFFA(1)",
  "acid value, 5.20 mL of 0.1003 mol/L on 20.12 g, mg KOH/g": "=TITRE.ACIDVALUE(5.2,0.1003,20.12)",
  "10.00 mL of alcoholic titrant read at 28 C, set at 20 C, mL":
    '=TITRE.TEMPERATURECORRECTED(10,28,20,"alcohol")',
  // One gram in 10 mL: mol/L = 1000 x 1 / (molar mass x 10).
  "molar mass of potassium hydrogen phthalate, g/mol": "=100/TITRE.MOLARITYFROMKHP(1,10)",
  "molar mass of KOH, g/mol": '=TITRE.TITRANTMASS(1,1,"KOH",100)',
  "KOH for the acid, g per g of FFA (within 2 %)": perGramOfAcid("KOH"),
  "NaOH for the acid, g per g of FFA (within 2 %)": perGramOfAcid("NaOH"),
  "NaOCH3 for the acid, g per g of FFA (within 2 %)": perGramOfAcid("NaOCH3"),
  // At a density of 1 kg/L the kilograms are the litres.
  "litres in a US gallon": '=TITRE.OILMASS(1,"us_gal",1)',
  "litres in an imperial gallon": '=TITRE.OILMASS(1,"uk_gal",1)',
  "kilograms in a pound": '=TITRE.OILMASS(1,"lb")',

  "strength of sodium hydroxide against KHP, mol/L": `=${uncertaintyCell("strength")}`,
  "its standard uncertainty, mol/L": `=${uncertaintyCell("strength")}*${uncertaintyCell("strength, relative")}`,
  "standard uncertainty of hydrochloric acid, one titration, mol/L": `=${uncertaintyCell("acid, one titration")}`,
  "the same, mean of three, mol/L": `=${uncertaintyCell("acid, mean of three")}`,
  "standard deviation of twenty temperatures, C": `=${spreadCell("temperatures", "deviation")}`,
  "standard uncertainty of their mean, C": `=${spreadCell("temperatures", "deviation")}/SQRT(20)`,
  "limits of 96 and 104 C, rectangular, C": "=(104-96)/2/SQRT(3)",
  "the same, triangular, C": "=(104-96)/2/SQRT(6)",
  "degrees of freedom of the end gauge, cut off": `=${uncertaintyCell("gauge, freedom")}`,
  "its coverage factor, 99 %": studentT("seventeen, 99 %", 17),

  "standard deviation of the eight uranium ratios": `=${spreadCell("uranium, 90 %", "deviation")}`,
  "G of 245.57 among them (printed cut off, within 0.01 %)": `=${spreadCell("uranium, 90 %", "G")}`,
  "critical G for eight, one-sided 5 %": `=${spreadCell("uranium, 90 %", "critical G")}`,
  "T of the ten breaking strengths": `=${spreadCell("strengths, 95 %", "G")}`,
  "critical G for ten, 5 %": `=${spreadCell("strengths, 95 %", "critical G")}`,
  "critical G for ten, 1 %": `=${spreadCell("strengths, 99 %", "critical G")}`,
  "Dixon's Q of ten textbook values": `=MAX(SMALL(${textbook},2)-MIN(${textbook}),MAX(${textbook})-LARGE(${textbook},2))/(MAX(${textbook})-MIN(${textbook}))`,
  "Student t, 95 %, 2 degrees of freedom": studentT("three", 3),
  "Student t, 95 %, 10 degrees of freedom": studentT("eleven", 11),
  // 10000000.1 as a binary fraction is off by 4e-10, which STDEV shows as 0.1000000006: so the
  // deviations are brought back to the decimals they were printed with, as the add-in reads figures.
  "standard deviation of NumAcc4, 1001 values (within 1e-9)": `=SQRT(SUMPRODUCT(ROUND(${numAcc4Cells}-AVERAGE(${numAcc4Cells}),6)^2)/(COUNT(${numAcc4Cells})-1))`,

  "soap, 1.00 mL of 0.01 mol/L on 40 g, mg/kg of sodium oleate":
    '=TITRE.FUELSOAP(1,"neutralised",0.01,40,"NaOH")',
  "free base, 0.40 mL of 0.01 mol/L on 6.00 g, mg/kg of KOH":
    '=TITRE.FUELCATALYST(0.4,"neutralised",0.01,6,"KOH")',
  "potassium in 41.0 mg/kg of its oleate: the limit, mg/kg": '=TITRE.FUELMETAL(41,"KOH")',
  // The words turn over 1.645 below the limit of 10: between these two.
  "guard band of a standard uncertainty of 1, 95 % (within 0.4 %)":
    '=IF(AND(LEFT(TITRE.AGAINSTLIMIT(8.35,1.96,10),5)="below",LEFT(TITRE.AGAINSTLIMIT(8.36,1.96,10),6)="cannot"),10-(8.35+8.36)/2,0)',
  "glycerol, 1 mL of 1 mol/L thiosulfate on 1 g, %": "=TITRE.GLYCEROL(1,2,1,1)",
  // A 0 is a cell left empty: so what is bound is 0.26 less 0.02.
  "conversion at 0.24 % of total glycerol, none of it free, %": "=TITRE.CONVERSION(0.26,0.02)",
  "water by drying, dish 45.312 g, 65.812 to 65.790 g, %":
    "=TITRE.LOSSONHEATING(45.312,65.812,65.79)",
  // For the same reason not at 0 C: a tenth warmer by the kelvin, at a tenth more pressure.
  "water on 100 g that gives 22.414 L of gas, 0 C and 101.325 kPa, %":
    "=TITRE.WATERFROMGAS(101.325*1.1,22.414,27.315,100)",
  "water from 1000 g of KOH in methanol, kg":
    '=INDEX(TITRE.WATERBALANCE(100,0.05,1,"KOH",100,1),3,2)',
  "warmth of 909 g in 24.9 L, by 10 g in 0.100 L that rose 22 C, C":
    "=TITRE.TEMPERATURERISE(909,24.9,10,0.1,22)",
  "end point of silver nitrate into chloride, mL": `=TITRE.ENDPOINT(${columnOf("silver nitrate")},${columnOf("its probe")})`,
};
