/** The values of the table `Bench` changed; settings that it lacks go below the others. */
import { andList } from "../../../sheet/and-list";
import { areaName } from "../../../sheet/cell-name";
import { cellAt } from "../../../sheet/address";
import { counted } from "../../../sheet/counted";
import type { Block, Step, Table, Values } from "../../../sheet/port";
import {
  benchHeadings,
  type BenchId,
  benchIds,
  benchSettings,
  type BenchSetting,
  type BenchValues,
} from "../../tables/bench";
import { benchCell } from "../../tables/bench-sheet";
import { finished } from "../finished";
import { isHeading, placeOf } from "../headings";
import type { Plan, PlannedCell } from "../plan";
import { plannedCell } from "../planned-cell";
import { valueText } from "../preview-text";

interface Found {
  readonly table: Table;
  readonly values: Values["values"];
}

interface Row {
  readonly id: BenchId;
  readonly row: number;
  /** It is not in the table yet. */
  readonly isNew: boolean;
  readonly now: string;
}

/** Where each setting stands, or will: below the others where somebody took it away. */
function rowsOf({ table, values }: Found, wanted: BenchValues): Row[] {
  const name = placeOf("Setting", table.headings) ?? 0;
  const value = placeOf("Value", table.headings) ?? 1;
  let below = values.length;
  return benchIds.flatMap((id): Row[] => {
    const at = values.findIndex((row, place) => {
      const cell = row[name];
      return place > 0 && typeof cell === "string" && isHeading(benchSettings[id].name, cell);
    });
    if (at > 0) return [{ id, row: at, isNew: false, now: valueText(values[at]?.[value] ?? "") }];
    return (wanted[id] ?? "") === "" ? [] : [{ id, row: below++, isNew: true, now: "" }];
  });
}

function stepsFor({ table }: Found, row: Row, wanted: BenchValues): Step[] {
  const { sheet, row: top, column: left } = table.block;
  const at = (heading: string): Block =>
    cellAt(sheet, top + row.row, left + (placeOf(heading, table.headings) ?? 0));
  const set = (heading: string, value: string | number): Step => ({
    do: "set-cells",
    block: at(heading),
    contents: [[{ kind: "value", value }]],
  });
  const { name, unit, note }: BenchSetting = benchSettings[row.id];
  const [setting, value, unitHeading, whatItIs] = benchHeadings;
  const texts = [
    [setting, name],
    [unitHeading, unit],
    [whatItIs, note],
  ] as const;
  return [
    ...(row.isNew
      ? texts
          .filter(([heading]) => placeOf(heading, table.headings) !== undefined)
          .map(([heading, text]) => set(heading, text))
      : []),
    set(value, benchCell(row.id, wanted[row.id] ?? "")),
  ];
}

export function changedBench(found: Found, wanted: BenchValues): Plan {
  const { table } = found;
  const column = table.block.column + (placeOf("Value", table.headings) ?? 1);
  const rows = rowsOf(found, wanted).filter(
    ({ id, now }) => now !== valueText(benchCell(id, wanted[id] ?? "")),
  );
  const cells = rows.map(({ id, row, now }): PlannedCell =>
    plannedCell({
      block: cellAt(table.block.sheet, table.block.row + row, column),
      heading: benchSettings[id].name,
      now,
      content: { kind: "value", value: benchCell(id, wanted[id] ?? "") },
    }),
  );
  const last = Math.max(table.block.rows, ...rows.map(({ row }) => row + 1));
  const block: Block = { ...table.block, rows: last };
  const lost = cells.filter(({ now }) => now !== "");
  const says = lost.map(({ heading, now, shown }) => `${heading} ${now}, then ${shown || "empty"}`);
  return finished({
    what: "keep my bench",
    where: `${areaName(block)} of the sheet ${block.sheet}`,
    summary:
      rows.length === 0
        ? `The sheet ${block.sheet} says all of this already.`
        : `${counted(rows.length, "setting")} on the sheet ${block.sheet}.`,
    cells,
    makes: [],
    remarks:
      lost.length === 0
        ? []
        : [
            {
              // settings of one's own, typed over by hand: it is said, and one press does it
              sentence: `Changed for good: ${andList(says)}.`,
            },
          ],
    block,
    table: table.name,
    steps: [
      ...(last > table.block.rows
        ? ([{ do: "grow-table", name: table.name, block }] as const)
        : []),
      ...rows.flatMap((row) => stepsFor(found, row, wanted)),
    ],
  });
}
