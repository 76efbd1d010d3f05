/** A host should answer with a fault where it fails. Should one throw all the same, it is a fault too. */
import { type Fault, fault } from "../../sheet/port";

export async function asked<T>(call: () => Promise<T>): Promise<T | Fault> {
  try {
    return await call();
  } catch {
    return fault("failed");
  }
}
