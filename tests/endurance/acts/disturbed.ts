/** What goes wrong while a change is planned or written: faults, protection, filters. */
import type { Call, Interference } from "../../host/memory/interference";
import { fault, type FaultCode } from "../../../src/sheet/port";
import type { World } from "../world";

/** What happened, for the model: nothing; something that may refuse; something that may hide an answer. */
export type Disturbance = "none" | "refuses" | "hides";

/** At the nth call of a verb from now, once. */
function once(
  verb: Call["verb"],
  nth: number,
  moment: (call: Call) => boolean,
  answer: FaultCode | "throws",
): Interference {
  let count = 0;
  let isDone = false;
  return (call) => {
    if (call.verb !== verb || isDone) return undefined;
    if (call.moment === "before") count += 1;
    if (count !== nth || !moment(call)) return undefined;
    isDone = true;
    if (answer === "throws") throw new Error("the program broke off");
    return fault(answer);
  };
}

const before = ({ moment }: Call): boolean => moment === "before";
const after = ({ moment }: Call): boolean => moment === "after";

/** Sets something going wrong with the next change, in a quarter of them. */
export function disturb({ chance, workbook }: World): Disturbance {
  if (chance.is(0.75)) return "none";
  const { host } = workbook;
  const step = chance.whole(0, 6);
  const codes = ["being-edited", "failed", "throws", "half-done"] as const;
  return chance.of<() => Disturbance>([
    () => {
      host.interference = once("read", chance.whole(1, 5), before, chance.of(codes));
      return "hides";
    },
    () => {
      host.interference = once("write", 1, before, chance.of([...codes, "no-answer"]));
      return "hides";
    },
    () => {
      host.interference = once("write", 1, ({ moment }) => moment === step, chance.of(codes));
      return "refuses";
    },
    () => {
      host.interference = once("write", 1, after, chance.of(["no-answer", "half-done"]));
      return "hides";
    },
    () => {
      const name = chance.of(workbook.sheetNames());
      workbook.peek(({ sheets }) => {
        for (const sheet of sheets) if (sheet.name === name) sheet.isProtected = true;
      });
      return "refuses";
    },
    () => {
      workbook.peek((book) => {
        if (chance.is(0.4)) for (const table of book.tables) table.isFiltered = true;
        else if (chance.is(0.5)) book.isProtected = true;
        else book.isReadOnly = true;
      });
      return "refuses";
    },
  ])();
}

export function calm({ workbook }: World): void {
  workbook.host.interference = () => undefined;
  workbook.free();
}
