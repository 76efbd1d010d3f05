/** A host that is not waited for without end: a late answer becomes a fault, and is then not heard. */
import { fault, type Fault, type Host } from "../port";

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
  read: (questions) => within(host.read(questions), milliseconds),
  write: (label, steps) => within(host.write(label, steps), milliseconds),
  watch: (heard) => host.watch(heard),
  fileBytes: () => within(host.fileBytes(), milliseconds),
});
