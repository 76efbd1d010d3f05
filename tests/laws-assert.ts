/** A law that was tried is an assertion, whatever it throws with: see `requireAssertions` in vitest.config.ts. */
import fc from "fast-check";
import { expect } from "vitest";

fc.configureGlobal({
  reporter: (tried) => {
    expect(
      tried.failed,
      `${fc.defaultReportMessage(tried)}\n${String(tried.errorInstance ?? "")}`,
    ).toBe(false);
  },
});
