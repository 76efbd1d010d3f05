/**
 * A chart as the spreadsheet program's own. Its lines are set one by one: left to find them itself, the
 * program takes headings that are numbers for figures.
 */
import type { Chart } from "../../sheet/port";
import { rangeOf } from "./ranges";

interface Title {
  text: string;
  visible: boolean;
  setFormula(formula: string): void;
}

/** A title that follows a cell stays away where the program has none: its words are not known here. */
function setTitle(title: Title, words: string, followsSince = "1.7"): void {
  const follows = words.startsWith("=");
  const isOffered =
    !follows || Office.context.requirements.isSetSupported("ExcelApi", followsSince);
  title.visible = isOffered;
  if (!follows) title.text = words;
  else if (isOffered) title.setFormula(words);
}

/** The ExcelApi since which the title of an axis can follow a cell. */
const axisFollowsSince = "1.16";

export function addChart(context: Excel.RequestContext, chart: Chart): void {
  const { lines, place } = chart;
  const [first] = lines;
  if (!first) return;
  const made = context.workbook.worksheets
    .getItem(chart.sheet)
    .charts.add("XYScatterLines", rangeOf(context, first.values), "Columns");
  for (const [at, { name, values }] of lines.entries()) {
    const series = at === 0 ? made.series.getItemAt(0) : made.series.add(name);
    series.name = name;
    series.setValues(rangeOf(context, values));
    series.setXAxisValues(rangeOf(context, chart.across));
  }
  setTitle(made.title, chart.title);
  setTitle(made.axes.categoryAxis.title, chart.acrossTitle, axisFollowsSince);
  setTitle(made.axes.valueAxis.title, chart.upTitle, axisFollowsSince);
  made.legend.position = "Right";
  const whole = rangeOf(context, place);
  made.setPosition(whole.getCell(0, 0), whole.getCell(place.rows - 1, place.columns - 1));
}
