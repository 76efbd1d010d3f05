/**
 * Formulas as people and programs write them into workbooks, with cells by chance: those that are mended
 * or proven, and every kind that embedded engines get wrong.
 */
import type { Chance } from "./chance";

/** Where to find what: names of sheets, tables and names are those of workbook.ts. */
export interface Pool {
  readonly chance: Chance;
  /** Formula cells made so far. */
  readonly before: readonly string[];
}

const row = (chance: Chance) => 2 + chance.below(10);

const number = ({ chance }: Pool) =>
  `${chance.is(0.2) ? "$" : ""}${chance.one(["A", "B"])}${row(chance)}`;
const text = ({ chance }: Pool) => `C${row(chance)}`;
const any = (pool: Pool) =>
  pool.before.length > 0 && pool.chance.is(0.4) ? pool.chance.one(pool.before) : number(pool);
const range = ({ chance }: Pool) => {
  const column = chance.one(["A", "B"]);
  const top = 2 + chance.below(5);
  return `${column}${top}:${column}${top + 1 + chance.below(5)}`;
};
const wide = (pool: Pool) => (pool.chance.is(0.3) ? "A2:C11" : range(pool));

type Make = (pool: Pool) => string;

/** Meant to be worked out. */
const usual: readonly Make[] = [
  (p) => `${any(p)}*2+${any(p)}`,
  (p) => `(${any(p)}-${number(p)})/4`,
  (p) => `-${number(p)}^2`,
  (p) => `(${number(p)}%)*1`,
  (p) => `SUM(${range(p)})`,
  (p) => `SUM(${range(p)},${any(p)},3)`,
  (p) => `AVERAGE(${range(p)})`,
  (p) => `MIN(${range(p)})&" to "&MAX(${range(p)})`,
  (p) => `COUNT(${wide(p)})`,
  (p) => `COUNTA(${wide(p)})`,
  (p) => `STDEV(${range(p)})`,
  (p) => `_xlfn.STDEV.S(${range(p)})`,
  (p) => `ROUND(${any(p)}/3,${p.chance.below(4)})`,
  (p) => `IF(${any(p)}>${number(p)},"more",${number(p)})`,
  (p) => `IF(${text(p)}="","none",${text(p)})`,
  (p) => `IF(${number(p)}="","empty",${number(p)}*2)`,
  (p) => `IFERROR(${number(p)}/${number(p)},"bad")`,
  (p) => `IFERROR(1/(${number(p)}-${number(p)}),-1)`,
  () => `SUMPRODUCT(A2:A7,B2:B7)`,
  (p) => `SUMIF(C2:C11,${text(p)},A2:A11)`,
  (p) => `COUNTIF(A2:A11,">"&${number(p)})`,
  (p) => `INDEX(A2:A11,${1 + p.chance.below(9)})`,
  (p) => `VLOOKUP(${number(p)},A2:B11,2,FALSE)`,
  (p) => `MATCH(${number(p)},A2:A11,0)`,
  (p) => `LEN(${text(p)})+LEN(${number(p)})`,
  (p) => `UPPER(${text(p)})&"-"&TRIM(${text(p)})`,
  (p) => `'2nd''s list'!A${row(p.chance)}+Log!${number(p)}`,
  () => `SUM('2nd''s list'!A2:A6)`,
  () => `allLots*2`,
  (p) => `SUM(titres)/${number(p)}`,
  () => `SUM(Lots[mL])`,
  () => `SUM(Lots['#lot])+COUNTA(Lots[a '[b'] '#])`,
  (p) => `SUM(A:A)+${number(p)}`,
  (p) => `AND(${number(p)}>1,${number(p)}<9)`,
  (p) => `${text(p)}=${text(p)}`,
  (p) => `(TODAY()-${number(p)})*1`,
  (p) => `IF(TODAY()-${number(p)}>30,"old",${text(p)})`,
  (p) => `WEEKDAY(${number(p)}+45000,2)`,
  (p) => `ROWS(A2:A${row(p.chance)})+COLUMNS(A2:C2)`,
  () => `ROWS(Lots[])+COLUMNS(Lots[])`,
  () => `VLOOKUP(3,Lots[],3,FALSE)`,
  (p) => `CEILING(${number(p)},0.5)+FLOOR(${number(p)},0.5)`,
  (p) => `RANK(${number(p)},A2:A11)`,
  (p) => `QUARTILE(${range(p)},${p.chance.below(5)})+PERCENTILE(${range(p)},0.9)`,
  () => `SLOPE(A2:A11,B2:B11)`,
  () => `INTERCEPT(A2:A11,B2:B11)`,
  (p) => `FORECAST(${number(p)},A2:A11,B2:B11)`,
  (p) => `CONVERT(${number(p)},"l","gal")`,
  (p) => `TIME(${p.chance.below(24)},30,0)*${number(p)}`,
  (p) => `HOUR(${number(p)}/7)*60+MINUTE(${number(p)}/7)`,
  (p) => `VALUE(LEFT("2.5 mL",3))*${number(p)}`,
  () => `SUBTOTAL(9,S3!A1:A9)`,
  (p) => `SUBTOTAL(${p.chance.one([1, 2, 4, 9, 101, 103, 109])},${range(p)})`,
  (p) => `TITRE.CORRECTED(${range(p)},0.1)`,
  (p) => `(TITRE.ACIDVALUE(${number(p)},0.1,10))/1000`,
];

/** Every kind that another engine may work out otherwise. */
const odd: readonly Make[] = [
  () => `SUBTOTAL(9,A2:A11)`,
  () => `SUBTOTAL(109,A2:A11)`,
  () => `AGGREGATE(9,5,A2:A11)`,
  () => `SUM(Log:S3!A3)`,
  (p) => `SUM((A2:A4,B3:B5))+${number(p)}`,
  () => `SUM(A2:B9 B3:C5)`,
  () => `localRate*2`,
  () => `Lots[[#Totals],[mL]]`,
  () => `SUM(Lots[#All])`,
  () => `COUNTA(Lots[#Headers])`,
  (p) => `OFFSET(A2,${p.chance.below(5)},0)`,
  (p) => `INDIRECT("A"&${row(p.chance)})+${number(p)}`,
  () => `SUM(OFFSET(A2,0,0,4,1))`,
  () => `NOW()*0+1`,
  (p) => `[1]Rates!$A$1*${number(p)}`,
  () => `GETPIVOTDATA("mL",Log!$F$1)`,
  (p) => `CUBEVALUE("Model","[Oil].[All]")+${number(p)}`,
  () => `SUM(Lots)`,
  (p) => `_xlfn.XLOOKUP(${number(p)},A2:A11,B2:B11)`,
  () => `RAND()*0+${"B3"}`,
  (p) => `EDATE(${number(p)}+43861,1)`,
  (p) => `YEARFRAC(${number(p)}+43000,44000)`,
  (p) => `_xlfn.ISOWEEKNUM(${number(p)}+43000)`,
  () => `MEDIAN(A2:C11)`,
  (p) => `TEXT(${number(p)}/8,"0.00")`,
  () => `TEXT(1.005,"0.00")`,
  (p) => `SEARCH("o*t",${text(p)})`,
  (p) => `IFERROR(OTHER.ADDIN(${number(p)}),0)`,
  () => `A2:A11*1`,
  () => `C2:C11&"x"`,
  (p) => `HYPERLINK("#Log!A1",${number(p)})`,
  (p) => `CELL("row",${number(p)})`,
  (p) => `PRODUCT(${wide(p)})`,
  (p) => `MODE(A2:A11)+${number(p)}`,
  () => `SUMPRODUCT((C2:C11="oak")*A2:A11)`,
  () => `SUMPRODUCT(--(A2:A11>2))`,
  (p) => `LARGE(A2:A11,${1 + p.chance.below(3)})`,
  (p) => `COUNTBLANK(${wide(p)})`,
  (p) => `ROUND(${number(p)},-1)+INT(-${number(p)})+MOD(-7,3)`,
  (p) => `VALUE(${text(p)})`,
  (p) => `${text(p)}+1`,
  (p) => `"3"*${number(p)}`,
  (p) => `${text(p)}>${number(p)}`,
  () => `IF(TRUE,,5)`,
  (p) => `CHOOSE(${1 + p.chance.below(3)},A2,B2,C2)`,
  () => `MAX(IF(A2:A11>2,B2:B11))`,
  () => `relative+1`,
];

export const someFormula = (pool: Pool): string => {
  const { chance } = pool;
  const made = chance.one(chance.is(0.6) ? usual : odd)(pool);
  const onTop = pool.before.length > 0 && chance.is(0.25);
  return onTop ? `${made}&"|"&${chance.one(pool.before)}` : made;
};
