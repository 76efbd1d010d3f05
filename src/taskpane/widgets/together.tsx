/** Text in which no line ends between a figure and its unit: "2.45 mL" stays on one line. */
import { Children, type ReactNode } from "react";
import { amountUnits } from "../../core/quantity/units";

const figure = String.raw`\d(?:[\d.,]*\d)?`;
const amount = amountUnits.map(({ shown }) => shown).join("|");
const unit = `mg KOH/g|mol/L|kg/L|g/L|mol|${amount}|oz|s|% w/v|% FFA|%|°C|°F|C|to 1`;

/** "G 1.71", "± 0.06 % FFA", "0.90 ± 0.06 % FFA", "28.2 g". Letters after a unit make it another word. */
const kept = new RegExp(
  `((?<![A-Za-z])G ${figure}|(?:± ?)?${figure}(?: ± ${figure})? (?:${unit})(?![A-Za-z/]))`,
);

const inText = (text: string): ReactNode[] =>
  text.split(kept).map((piece, place) =>
    place % 2 === 0 ? (
      piece
    ) : (
      <span key={place} className="together">
        {piece}
      </span>
    ),
  );

/** Of its children, those that are text. */
export const Together = ({ children }: { children: ReactNode }) => (
  <>{Children.map(children, (each) => (typeof each === "string" ? inText(each) : each))}</>
);
