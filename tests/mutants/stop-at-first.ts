/**
 * Once a test has failed no other is asked, and no other file loaded. The runner's own `bail` is not
 * used: on a busy machine its word to stop comes late, and then it stops every later run as well.
 */
import { beforeEach } from "vitest";

const run = globalThis as { hasFailed?: boolean };

if (run.hasFailed) throw new Error("A test has failed: the others need not be asked.");

beforeEach((context) => {
  if (run.hasFailed) context.skip();
  context.onTestFailed(() => {
    run.hasFailed = true;
  });
});
