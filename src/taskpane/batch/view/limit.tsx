/** The acid one allows. What two sources say stands side by side; nobody's is taken for granted. */
import { Button } from "@fluentui/react-components";
import { useId } from "react";
import { Figure, useDesk, useMark } from "./desk";

const said = [
  ["3", "Kombe and others 2013 (read in a review)"],
  ["5", "Van Gerpen and others 2004 (commonly cited)"],
] as const;

/** @param isOffered which of them are of use here; left out: all */
export function Limit({ isOffered = () => true }: { isOffered?: (limit: string) => boolean }) {
  const { act } = useDesk();
  const inMark = useMark();
  const id = useId();
  return (
    <>
      <Figure field="limit" />
      <div className="side-by-side limits-said">
        {said
          .filter(([limit]) => isOffered(limit))
          .map(([limit, source]) => (
            <div key={limit}>
              <Button
                size="large"
                className="wide"
                aria-describedby={`${id}-${limit}`}
                onClick={() => {
                  act({ do: "type", field: "limit", text: limit });
                }}
              >
                Use {inMark(limit)} %
              </Button>
              <p className="soft" id={`${id}-${limit}`}>
                {source}
              </p>
            </div>
          ))}
      </div>
    </>
  );
}
