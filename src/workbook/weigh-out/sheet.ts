/**
 * A sheet to print and take to the scale: amounts in large type with boxes to tick, what they were
 * worked out from, the cautions, and lines to sign. Every amount is a live formula.
 */
import { cautions } from "../../core/batch/cautions";
import { amountUnits } from "../../core/quantity/units";
import { baseNamed } from "../../core/reference/bases";
import type { BookCell, BookSheet, BookValue } from "../book";
import { asIfPure } from "../tables/batches";
import { linesOf } from "./lines";
import { at, type Places, placesOf } from "./places";
import type { WeighOutRecord } from "./weigh-out-record";

type Row = (BookCell | null)[];

const box: BookCell = { value: "☐", style: "large" };
const text = (value: BookValue): BookCell => ({ value, style: "words" });
const heading = (...words: string[]): Row => [
  null,
  ...words.map((value): BookCell => ({ value, style: "heading" })),
];
const large = (formula: string, format: string): BookCell => ({
  formula,
  format,
  style: "large",
});
const worked = (formula: string, format = "General"): BookCell => ({
  formula,
  format,
  style: "calculated",
});
const given = (value: BookValue, format?: string): BookCell => ({
  value,
  style: "input",
  ...(format === undefined ? {} : { format }),
});

const kilograms = (places: Places, unit: string): string =>
  `TITRE.OILMASS(${at(places.amount)},"${unit}",${at(places.oil)},${at(places.temperature)})`;

const grams = ({ mix, base, assay, charge, limit }: Places, oilMass: string): string =>
  `TITRE.CATALYST(${oilMass},${at(mix)},${at(base)},${at(assay)},${at(charge)},${at(limit)})`;

const methanol = ({ ratio, mix, oil }: Places, oilMass: string): string =>
  `TITRE.METHANOL(${oilMass},${at(ratio)},${at(mix)},${at(oil)})`;

/** A methoxide of assay under 50 % is a solution, and the rest of it is methanol of 791.4 g/L. */
function brought({ batch }: WeighOutRecord, places: Places, lye: string): string {
  const isSolution = baseNamed(batch.base)?.isMethoxide === true && batch.assay.lt(50);
  return isSolution ? `-${lye}*(100-${at(places.assay)})/100/791.4` : "";
}

const pounds = (oilKilograms: string): string =>
  `INT(ROUND(${oilKilograms}/0.028349523125,1)/16)&" lb "&FIXED(MOD(ROUND(${oilKilograms}/0.028349523125,1),16),1,TRUE)&" oz"`;

function weighRows(record: WeighOutRecord, places: Places): Row[] {
  const { batch, lots, hasPounds } = record;
  const oilMass = kilograms(places, batch.unit);
  const lyeRow = places.weigh + lots.length + 1;
  const lye = `C${String(lyeRow)}`;
  const inPounds = (mass: string): BookCell | null =>
    hasPounds ? worked(`=${pounds(mass)}`) : null;
  const lotRows = lots.map(({ lot }, index): Row => {
    const share = lots.length === 1 ? "" : `*C${String(places.firstLot + index)}/100`;
    const own = `C${String(places.weigh + index)}`;
    return [
      box,
      { value: `Oil, lot ${String(lot)}`, style: "large" },
      large(`=${oilMass}${share}`, "0.00"),
      { value: "kg", style: "large" },
      inPounds(own),
    ];
  });
  const lyeName = [batch.base, batch.lyeLot === "" ? "" : `lot ${batch.lyeLot}`]
    .filter((word) => word !== "")
    .join(", ");
  return [
    ...lotRows,
    [
      box,
      {
        value: brought(record, places, lye) === "" ? "Methanol" : "Methanol to add",
        style: "large",
      },
      large(`=MAX(0,${methanol(places, oilMass)}${brought(record, places, lye)})`, "0.00"),
      { value: "L", style: "large" },
      text("at 20 °C"),
    ],
    [
      box,
      { value: lyeName, style: "large" },
      large(`=${grams(places, oilMass)}`, "0.0"),
      { value: "g", style: "large" },
      inPounds(`(${lye}/1000)`),
    ],
  ];
}

/** What was so when the sheet was made: these words do not follow the figures. */
const wordsBelow = ({ between, route }: WeighOutRecord): string[] =>
  [
    between === ""
      ? "How sure the lye is is not known: the titration has no ±."
      : `The lye is 95 % ${between}, by the titration's own doubt when this sheet was made.`,
    `When this sheet was made: ${route}`,
  ].flatMap(linesOf);

const lastOf = (cell: string): string =>
  `LOOKUP(2,1/(Titrations[Lot]=${cell}),Titrations[Acid value mg KOH/g])`;

function lotRows({ batch, lots, target }: WeighOutRecord, places: Places): Row[] {
  const first = places.firstLot;
  const last = first + lots.length - 1;
  const range = (column: string): string => `${column}${String(first)}:${column}${String(last)}`;
  const mixed =
    lots.length === 1 ? `D${String(first)}` : `TITRE.BLENDEDACIDVALUE(${range("D")},${range("C")})`;
  const pure = batch.isTitrantAsIfPure ? `*${at(places.assay)}/100` : "";
  const beside = batch.isTitrantAsIfPure ? [text(`times the assay: ${asIfPure}`)] : [];
  const share = `100*TITRE.BLEND(D${String(first + 1)},D${String(first)},TITRE.ACIDVALUEFROMFFA(${target?.toString() ?? ""}))`;
  const toTarget: Row[] = target
    ? [
        [
          null,
          text(`For ${target.toString()} % FFA, of lot ${String(lots[1]?.lot ?? "")}`),
          worked(`=${share}`, "0.00"),
          text("% of the mass"),
        ],
      ]
    : [];
  return [
    heading("Lot", "% of the mass", "Acid value"),
    ...lots.map(({ lot, percent }, index): Row => [
      null,
      given(lot),
      given(percent.toNumber(), "0.0"),
      worked(`=${lastOf(`B${String(first + index)}`)}`, "0.00"),
    ]),
    [
      null,
      text("Acid value of the batch, mg KOH/g"),
      worked(`=${mixed}${pure}`, "0.00"),
      ...beside,
    ],
    ...toTarget,
  ];
}

function fromRows({ batch, oil }: WeighOutRecord): Row[] {
  const unit = amountUnits.find(({ name }) => name === batch.unit)?.shown ?? batch.unit;
  const row = (what: string, cell: BookCell | null, unitWords = ""): Row => [
    null,
    text(what),
    cell,
    ...(unitWords === "" ? [] : [text(unitWords)]),
  ];
  const optional = batch.temperature;
  return [
    row("Amount of oil", given(batch.amount.toNumber(), "0.0"), unit),
    row("Oil at", optional ? given(optional.toNumber(), "0.0") : given(""), "°C; empty: 20"),
    row("Kind of oil", given(oil)),
    row("Base", given(batch.base)),
    row("Assay", given(batch.assay.toNumber(), "0.0"), "%"),
    row("Charge for the reaction, pure", given(batch.charge.toNumber(), "0.000"), "% of the oil"),
    row("Methanol to one of triglyceride", given(batch.ratio.toNumber(), "0.00"), "mol"),
    row("Allowed acid", given(batch.limitFfa.toNumber(), "0.0"), "% FFA as oleic"),
  ];
}

const line = (what: string): Row => [
  null,
  text(`${what} ${"_".repeat(24)}`),
  null,
  text(`Date ${"_".repeat(20)}`),
];

const cautionRows = (): Row[] =>
  cautions.flatMap((caution) =>
    linesOf(caution).map((words, index): Row => [index === 0 ? text("!") : null, text(words)]),
  );

const sheetWidth = 5;

export function weighOutSheet(record: WeighOutRecord, name: string): BookSheet {
  const { batch, lots } = record;
  const words = wordsBelow(record);
  const places = placesOf(lots.length, words.length, record.target !== undefined);
  const rows: Row[] = [
    [{ value: "Weigh-out sheet", style: "title" }],
    [
      null,
      text(`Batch ${batch.batch}`.trim()),
      { value: batch.date, format: "yyyy-mm-dd", align: "left" },
    ],
    [null, text("A result is not a permission. Tick each amount once it stands on the scale.")],
    [],
    heading("To weigh", "Amount", "Unit", ""),
    ...weighRows(record, places),
    ...words.map((each): Row => [null, text(each)]),
    [],
    ...lotRows(record, places),
    [],
    ...fromRows(record),
    [],
    heading("Mind"),
    ...cautionRows(),
    [],
    line("Weighed by"),
    line("Checked by"),
  ];
  return {
    name,
    rows,
    columnWidths: [5, 36, 16, 16, 22],
    tables: [],
    frozenRows: 0,
    print: {
      area: { row: 0, column: 0, rows: rows.length, columns: sheetWidth },
      landscape: false,
      fitToWidth: true,
    },
  };
}
