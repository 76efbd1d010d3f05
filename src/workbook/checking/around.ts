/** What the program is, what of its file can be read, and what the pane was refused. */
import { shareWorkbook } from "../../partner/sharing";
import { isFault } from "../../sheet/port";
import type { ProgramFacts } from "../../sheet/port/checked-program";
import { isFileProblem, openXlsx, sayFile } from "../../xlsx";
import { amber, green, red, type Seen, someOf } from "./lines";
import { stoppedBy, type Tools } from "./tools";

/** Without these the add-in is not to be loaded at all. */
const needed: readonly (readonly [string, number])[] = [
  ["CustomFunctionsRuntime", 1.3],
  ["SharedRuntime", 1.1],
  ["ExcelApi", 1.13],
  ["CompressedFile", 1.1],
];

const behindPoint = (version: string | number): number => Number(String(version).split(".")[1]);

export function offers({ sets }: ProgramFacts): Seen {
  const newestOf = (name: string) => sets.find((set) => set.name === name)?.newest;
  const lacking = needed.filter(([name, from]) => {
    const newest = newestOf(name);
    return newest === undefined || behindPoint(newest) < behindPoint(from);
  });
  const words = sets.map(({ name, newest }) => `${name} ${newest ?? "none"}`).join(", ");
  if (lacking.length === 0) return green("offers", words);
  return red(
    "offers",
    `Lacking: ${someOf(lacking.map((each) => each.join(" ")))}. It names ${words}.`,
  );
}

export const decimalMark = ({ decimalMark: mark }: ProgramFacts): Seen =>
  mark === undefined
    ? amber("decimal-mark", "It is not told.")
    : green(
        "decimal-mark",
        `It is "${mark}". Formulas were written with points and commas all the same.`,
      );

/** The namespace, in either form. */
const ours = /TITRE[._]/i;

export async function theFile({ host }: Tools): Promise<Seen> {
  const bytes = await host.fileBytes();
  if (isFault(bytes)) {
    if (bytes.code === "not-offered")
      return amber("file", "The program does not hand out its file.");
    throw stoppedBy(bytes);
  }
  const opened = openXlsx(bytes);
  if (isFileProblem(opened)) return red("file", sayFile(opened));
  const calls = opened.sheets.flatMap(({ cells }) =>
    cells.filter(({ formula }) => ours.test(formula ?? "")),
  );
  const asArrays = calls.filter(({ array }) => array !== undefined).length;
  const words = `${String(bytes.length)} bytes; ${String(calls.length)} cells call a function, ${String(asArrays)} of them as arrays.`;
  const shared = shareWorkbook(bytes, {
    kind: "partner",
    fileName: "the workbook that was checked",
  });
  if (isFileProblem(shared)) return red("file", `${words} No partner copy: ${sayFile(shared)}`);
  const left = shared.report.left.map(({ cell }) => cell);
  return left.length === 0
    ? green("file", `${words} A partner copy has them all as plain formulas.`)
    : amber("file", `${words} A partner copy leaves ${someOf(left)}.`);
}

/** The runtime's own telemetry asks for a frame, which the policy is meant to refuse. */
const isMeant = (refusal: string): boolean => refusal.startsWith("frame-src ");

export function refused(refusals: readonly string[]): Seen {
  const others = refusals.filter((each) => !isMeant(each));
  if (others.length > 0) return red("policy", `Refused: ${someOf(others)}.`);
  return green(
    "policy",
    refusals.length === 0 ? "Nothing." : `Only frames, as it should: ${someOf(refusals)}.`,
  );
}
