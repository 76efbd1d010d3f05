/** Lots of lye used before, each to be taken at a press, with its assay. */
import { Button } from "@fluentui/react-components";
import { withMark } from "../../widgets/typed-number";
import { lyeLotsOf } from "../lye-lots";
import { useDesk, useMark } from "./desk";

export function LyeLots() {
  const { view, act, batches, bench, lyeLots } = useDesk();
  const inMark = useMark();
  const { picked, words } = view.draft;
  const assay = view.figures.value("assay")?.toString();
  const lots = lyeLotsOf(batches, picked.base, { lot: words.lyeLot, assay }, bench, lyeLots);
  if (lots.length === 0) return null;
  return (
    <div className="acts lye-lots" role="group" aria-label="Other lots of this lye">
      {lots.map((each) => (
        <Button
          key={each.lot}
          size="large"
          onClick={() => {
            act({ do: "write", words: { lyeLot: each.lot } });
            act({ do: "type", field: "assay", text: withMark(each.assay, view.mark) });
          }}
        >
          {inMark(`Use ${each.lot}, ${each.assay} %`)}
        </Button>
      ))}
    </div>
  );
}
