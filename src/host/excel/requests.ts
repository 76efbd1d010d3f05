/** Steps in requests that the program takes: on the web none may be larger than 5 MB. */
import type { Content, Step } from "../../sheet/port";

/** Well below it, since what is counted here is less than what is sent. */
const mostBytes = 2_500_000;

/** What a cell costs beside what is written: its part of a format, a look, a comma. */
const perCell = 20;
const perStep = 1_500;

const bytesOf = (contents: readonly (readonly Content[])[]): number =>
  contents
    .flat()
    .reduce(
      (sum, content) =>
        sum + (content.kind === "keep" ? 5 : perCell + JSON.stringify(content).length),
      0,
    );

type SetCells = Extract<Step, { do: "set-cells" }>;

interface Weighed {
  readonly step: Step;
  readonly bytes: number;
}

/** A block of cells in parts, rows outside. */
function partsOf(step: SetCells): Weighed[] {
  const parts: Weighed[] = [];
  let from = 0;
  let bytes = 0;
  const close = (end: number): void => {
    if (end === from) return;
    parts.push({
      step: {
        ...step,
        block: { ...step.block, row: step.block.row + from, rows: end - from },
        contents: step.contents.slice(from, end),
      },
      bytes: bytes + perStep,
    });
    from = end;
    bytes = 0;
  };
  for (const [at, row] of step.contents.entries()) {
    const more = bytesOf([row]);
    if (bytes + more > mostBytes) close(at);
    bytes += more;
  }
  close(step.contents.length);
  return parts;
}

export function requestsOf(steps: readonly Step[]): Step[][] {
  const requests: Step[][] = [];
  let bytes = Infinity;
  for (const each of steps.flatMap((step) =>
    step.do === "set-cells" ? partsOf(step) : [{ step, bytes: perStep }],
  )) {
    if (bytes + each.bytes > mostBytes) {
      requests.push([]);
      bytes = 0;
    }
    requests.at(-1)?.push(each.step);
    bytes += each.bytes;
  }
  return requests;
}
