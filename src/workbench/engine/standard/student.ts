/** Student's t and Fisher's F, from the same tables of our own that the uncertainty goes by. */
import { fTail } from "../../../core/replicates/f-tail";
import { studentT, twoSidedTail } from "../../../core/replicates/student-t";
import { ofValues, type Standard } from "./adapter";
import { numbers } from "./convert";
import { doubt } from "./doubt";
import { Fault } from "./value";

function refused(): never {
  doubt();
  throw new Fault("#NUM!");
}

export const student: Readonly<Record<string, Standard>> = {
  TINV: ofValues(2, 2, (outside = null, freedom = null) => {
    const [p = 0, degrees = 0] = numbers([outside, freedom]);
    if (p <= 0 || p >= 1 || degrees < 1) refused();
    return studentT(p, Math.floor(degrees));
  }),
  TDIST: ofValues(3, 3, (value = null, freedom = null, tails = null) => {
    const [t = 0, degrees = 0, sides = 0] = numbers([value, freedom, tails]);
    if (t < 0 || degrees < 1 || (sides !== 1 && sides !== 2)) refused();
    return (twoSidedTail(t, Math.floor(degrees)) * sides) / 2;
  }),
  FDIST: ofValues(3, 3, (value = null, above = null, below = null) => {
    const [f = 0, first = 0, second = 0] = numbers([value, above, below]);
    if (f < 0 || first < 1 || second < 1) refused();
    return fTail(f, Math.floor(first), Math.floor(second));
  }),
};
