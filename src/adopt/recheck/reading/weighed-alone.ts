/**
 * A logbook that writes down what was weighed and no dose beside it: what was weighed is then what is
 * compared with the readings, as near as people weigh.
 */
import { columnOf, type LogbookMapping } from "../../recognising/mapping";
import { doseRoles } from "./figure-roles";

/** Weighing to the nearest division of a kitchen balance is no mistake. */
export const weighedTolerance = 0.03;

export const holdsDoses = (mapping: LogbookMapping): boolean =>
  doseRoles.some((role) => columnOf(mapping, role) !== undefined);

const asDose = (mapping: LogbookMapping, within: number): LogbookMapping => ({
  ...mapping,
  columns: mapping.columns.map((each) =>
    each.role === "weighed" ? { ...each, role: "catalyst", within } : each,
  ),
});

export const weighedAlone = (mapping: LogbookMapping): LogbookMapping =>
  asDose(mapping, weighedTolerance);

/** To its digits, as a dose that was worked out. */
export const weighedAsWorked = (mapping: LogbookMapping): LogbookMapping => asDose(mapping, 0);
