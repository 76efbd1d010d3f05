import type { Ref } from "react";

/** Fluent's fields take a ref to their element, but under our strict options its types say: to nothing. */
export const asRef = <Element>(ref: Ref<Element> | undefined): Ref<never> =>
  (ref ?? null) as Ref<never>;
