/** Which lots the batch is of, with their acid values by reference. */
import { worthWordFormula, worthWordOf } from "../record/worth";
import { asIfPure } from "../tables/batch-cells";
import { ofLastTitration } from "../tables/last-titration";
import { worthHeading } from "../tables/titration-cells";
import { given, heading, type Row, text, worked } from "./cells";
import { at, dayRow, type Places } from "./places";
import type { WeighOutRecord } from "./weigh-out-record";

/** @param row of the lot's name on this sheet */
const lastOf = (heading: string, row: number): string =>
  ofLastTitration(heading, `B${String(row)}`, at(dayRow));

/** As a formula: is a lot worth another word than when the sheet was made? "" where none had a word. */
export function worthChanged({ lots }: WeighOutRecord, { firstLot }: Places): string {
  const changed = lots.flatMap(({ worth }, index) => {
    const now = worthWordFormula(lastOf(worthHeading, firstLot + index));
    return worth === "" ? [] : [`${now}<>"${worthWordOf(worth)}"`];
  });
  return changed.length === 0 ? "" : `OR(${changed.join(",")})`;
}

/** The lots, their shares, and the acid of the mix. */
export function lotRows({ batch, lots, target }: WeighOutRecord, places: Places): Row[] {
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
      given(percent.toNumber(), "0.0#"),
      worked(`=${lastOf("Acid value mg KOH/g", first + index)}`, "0.00"),
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
