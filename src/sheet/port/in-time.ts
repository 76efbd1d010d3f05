/**
 * A host that is not waited for without end: a late answer becomes a fault, and is then not heard. Many
 * cells are read and written in pieces, each of which may take as long as a call.
 */
import { fault, type Fault, type Host, type Question, type Step } from "../port";

const cellsAtOnce = 20_000;

const pieces = (asked: readonly (Question | Step)[]): number =>
  asked.reduce(
    (sum, each) =>
      "block" in each ? sum + (each.block.rows * each.block.columns) / cellsAtOnce : sum,
    1,
  );

async function within<T>(answer: Promise<T>, milliseconds: number): Promise<T | Fault> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<Fault>((resolve) => {
    timer = setTimeout(() => {
      resolve(fault("no-answer"));
    }, milliseconds);
  });
  try {
    return await Promise.race([answer, late]);
  } finally {
    clearTimeout(timer);
  }
}

export const inTime = (host: Host, milliseconds: number): Host => ({
  capabilities: () => within(host.capabilities(), milliseconds),
  read: (questions) => within(host.read(questions), milliseconds * pieces(questions)),
  write: (label, steps) => within(host.write(label, steps), milliseconds * pieces(steps)),
  watch: (heard) => host.watch(heard),
  fileBytes: () => within(host.fileBytes(), milliseconds),
  openFile: (bytes) => within(host.openFile(bytes), milliseconds),
});
