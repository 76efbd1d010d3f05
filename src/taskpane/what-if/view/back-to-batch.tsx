/** A column of the table handed back to Batch: its lot, base, assay, charge and limit. */
import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { columnName } from "../../../workbook/what-if/names";
import type { WhatIfQuestion } from "../../../workbook/what-if/question";
import { useOpenTask } from "../../open-task";
import { PickList } from "../../widgets/pick-list";
import { useMark } from "./desk";

export function BackToBatch({ question }: { question: WhatIfQuestion }) {
  const open = useOpenTask();
  const inMark = useMark();
  const [at, setAt] = useState("0");
  const { columns, by, limitFfa } = question;
  const column = columns[Number(at)] ?? columns[0];
  if (open === undefined || column === undefined) return null;
  const lot = column.acid.lot === undefined ? undefined : String(column.acid.lot).trim();
  return (
    <section className="back-to-batch">
      {columns.length === 1 ? null : (
        <PickList
          label="Column"
          value={columns[Number(at)] === undefined ? "0" : at}
          options={columns.map((each, place) => [String(place), inMark(columnName(by, each))])}
          onPick={setAt}
        />
      )}
      <Button
        size="large"
        className="wide"
        onClick={() => {
          open("batch", lot ?? "", {
            ...(lot === undefined ? { acid: column.acid.value.toString() } : { lot }),
            base: column.base.name,
            assay: column.assay.toString(),
            charge: column.charge.toString(),
            limit: limitFfa.toString(),
          });
        }}
      >
        Use this in Batch
      </Button>
    </section>
  );
}
