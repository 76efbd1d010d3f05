/** Charts of the stand-in: each is put together call by call, as the program does it. */
import type { MemorySheet } from "../memory/book";
import type { Block, Chart } from "../../../src/sheet/port";
import { ProgramError, remote } from "./remote";
import { counted } from "./stand-in-counts";
import { blockOf, sheetToChange, type Talk } from "./stand-in-range";

type Line = { name: string; values: Block };

/** As it is put together. `across` belongs to each line in the program; they must agree. */
interface Drawn extends Omit<Chart, "lines"> {
  id: string;
  title: string;
  acrossTitle: string;
  upTitle: string;
  across: Block;
  lines: Line[];
  place: Block;
}

let made = 0;

/** @param formulaSince the ExcelApi, behind its 1 and the point, that lets it follow a cell */
function titleAt(
  { talk, model }: Talk,
  set: (words: string) => void,
  formulaSince: number,
): object {
  return remote(talk, "title", {
    sets: { visible: () => undefined, text: set },
    changes: model.newest < formulaSince ? {} : { setFormula: set },
  });
}

function lineAt({ talk }: Talk, chart: () => Drawn, at: number): object {
  const line = (): Line => {
    const found = chart().lines[at];
    if (!found) throw new ProgramError("InvalidArgument");
    return found;
  };
  return remote(talk, "series", {
    sets: { name: (name: string) => (line().name = name) },
    changes: {
      setValues: (range: object) => (line().values = blockOf(range)),
      setXAxisValues: (range: object) => (chart().across = blockOf(range)),
    },
  });
}

function chartAt(on: Talk, chart: () => Drawn): object {
  const { talk } = on;
  let lines = 1;
  return remote(talk, "chart", {
    changes: {
      setPosition: (from: object, to: object) => {
        const [first, last] = [blockOf(from), blockOf(to)];
        const rows = last.row - first.row + 1;
        chart().place = { ...first, rows, columns: last.column - first.column + 1 };
      },
    },
    parts: {
      title: () => titleAt(on, (words) => (chart().title = words), 7),
      axes: () =>
        remote(talk, "axes", {
          parts: {
            categoryAxis: () =>
              remote(talk, "axis", {
                parts: { title: () => titleAt(on, (words) => (chart().acrossTitle = words), 16) },
              }),
            valueAxis: () =>
              remote(talk, "axis", {
                parts: { title: () => titleAt(on, (words) => (chart().upTitle = words), 16) },
              }),
          },
        }),
      legend: () => remote(talk, "legend", { sets: { position: () => undefined } }),
      series: () =>
        remote(talk, "series", {
          gives: {
            getItemAt: (at: number) => lineAt(on, chart, at),
            add: (name: string) => {
              const at = lines;
              lines += 1;
              talk.later(() => {
                talk.changing();
                chart().lines.push({ name, values: chart().across });
              });
              return lineAt(on, chart, at);
            },
          },
        }),
    },
  });
}

export function chartsOf(on: Talk, sheet: () => MemorySheet): object {
  const { talk, model } = on;
  return remote(talk, "charts", {
    reads: {
      items: () =>
        (sheet().charts as Drawn[]).map(({ id }) =>
          remote(talk, "chart", {
            loaded: { id },
            changes: {
              delete: () => {
                const holder = sheetToChange(model, sheet().name);
                holder.charts = (holder.charts as Drawn[]).filter((each) => each.id !== id);
              },
            },
          }),
        ),
    },
    gives: {
      getCount: () => counted(on, () => sheet().charts.length),
      add: (type: string, range: object, by: string) => {
        if (type !== "XYScatterLines" || by !== "Columns") throw new ProgramError(type);
        let drawn: Drawn | undefined;
        talk.later(() => {
          talk.changing();
          const block = blockOf(range);
          made += 1;
          drawn = {
            id: `{${String(made)}}`,
            sheet: sheet().name,
            kind: "lines",
            title: "",
            acrossTitle: "",
            upTitle: "",
            across: block,
            lines: [{ name: "", values: block }],
            place: block,
          };
          sheetToChange(model, sheet().name).charts.push(drawn);
        });
        return chartAt(on, () => {
          if (!drawn) throw new ProgramError("ItemNotFound");
          return drawn;
        });
      },
    },
  });
}
