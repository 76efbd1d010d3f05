/**
 * What a lot's last titration says, by reference: a formula over the table `Titrations`, which follows
 * when a reading is put right. A batch is worked out from the last one up to its own day, so that a lot
 * titrated again later does not change what was weighed.
 */
import { titrationsName } from "./titration-cells";

/** Later than any day that is kept. */
const never = "1E6";

/** Not on a later day. A day that is none, of a row or of the batch, keeps nothing out. */
const notAfter = (day: string): string => {
  const days = `${titrationsName}[Date]`;
  return `*(1-ISNUMBER(${days})*(${days}>=IF(ISNUMBER(${day}),${day},${never})+1))`;
};

/**
 * @param lot the cell that names the lot
 * @param day the cell with the batch's day; left out: the lot's very last row counts
 */
export function ofLastTitration(heading: string, lot: string, day?: string): string {
  const ofLot = `(${titrationsName}[Lot]=${lot})`;
  const counts = day === undefined ? ofLot : `(${ofLot}${notAfter(day)})`;
  return `LOOKUP(2,1/${counts},${titrationsName}[${heading}])`;
}
