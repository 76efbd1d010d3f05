/** Where a file comes from that is opened. */
import type { Entry } from "./entry";
import type { FileOnDisk } from "./file-on-disk";

export interface Origin {
  /** As which this browser kept it. */
  readonly entry?: Entry | undefined;
  readonly disk?: FileOnDisk | undefined;
  /** Made here just now: it is in no file yet. */
  readonly isNew?: boolean;
}
