/** Said above the steps: the oil's water is much, or nobody measured it. */
import { waterOfOil } from "../../../core/batch/water-words";
import { computed } from "../../../core/exact/exact";
import { numberOf } from "../../../workbook/planning/read-batches";
import { Say } from "../../widgets/say";
import { useCard } from "./desk";

export function WaterOfOil() {
  const { batch, inMark } = useCard();
  const measured = numberOf(batch.under("Water %"));
  // a cell with 0 counts as empty
  const words = waterOfOil(measured ? computed(measured) : undefined);
  return words === undefined ? null : <Say tone="check">{inMark(words)}</Say>;
}
