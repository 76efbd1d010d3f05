/**
 * functions.js: hands every function of the catalogue to the spreadsheet program. The only place
 * where a problem becomes that program's error. #VALUE! (wrong) and #N/A (not there yet) are the two
 * kinds that carry a message.
 */
import { isMissing, isProblem, type Problem } from "../core/problem/problem";
import { say } from "../core/problem/wording";
import type { Answer } from "./answer";
import { catalogue } from "./catalogue";

/** Set while the pane checks the program: told of each call as it arrived. Both run in one page. */
declare global {
  var titrebookHears: ((id: string, given: readonly unknown[]) => void) | undefined;
}

/** Outside the program (a preview page) the error class is missing: a plain error with the code. */
function cellError(found: Problem): Error | CustomFunctions.Error {
  const code = isMissing(found) ? "#N/A" : "#VALUE!";
  if (typeof CustomFunctions.Error === "function") {
    return new CustomFunctions.Error(code as CustomFunctions.ErrorCode, say(found));
  }
  return Object.assign(new Error(say(found)), { code });
}

if (typeof CustomFunctions !== "undefined") {
  for (const { id, evaluate } of catalogue) {
    CustomFunctions.associate(id, (...given: unknown[]): Answer => {
      globalThis.titrebookHears?.(id, given);
      const answer = evaluate(given);
      if (isProblem(answer)) throw cellError(answer);
      return answer;
    });
  }
}
