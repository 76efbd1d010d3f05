/** What every screen must hold: no accessibility fault, no wider than the pane, large enough to touch. */
import axe from "axe-core";
import type { Page } from "playwright-core";

type AxeWindow = Window & {
  axe: {
    run(
      about: object,
      options: object,
    ): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }>;
  };
};

const ofColours = ["color-contrast", "link-in-text-block"];

/** Every rule; those of colours, where nothing else is new. */
export type Rules = "all" | "colours";

const rulesOf: Record<Rules, object> = {
  all: {},
  colours: { runOnly: { type: "rule", values: ofColours } },
};

/**
 * Each accessibility fault that axe finds, with the first element that has it.
 * @param exclude selectors of what is not looked at: a canvas
 */
export async function violations(
  page: Page,
  exclude: string[] = [],
  rules: Rules = "all",
): Promise<string[]> {
  // not as a script of the page, which may load none but its own; once, it is large
  const isThere = await page.evaluate(() => "axe" in window);
  if (!isThere) await page.evaluate(axe.source);
  const found = await page.evaluate(
    ([left, only]) => {
      const about = left.length > 0 ? { exclude: left } : document;
      const options = { ...only, resultTypes: ["violations"] };
      return (window as unknown as AxeWindow).axe.run(about, options);
    },
    [exclude, rulesOf[rules]] as const,
  );
  return found.violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ""}`);
}

/** What can be pressed or typed in and is smaller than a gloved finger: 44 px each way. */
function tooSmall(): string[] {
  const all = [...document.querySelectorAll("button, select, input, summary, [role=button]")];
  return all.flatMap((element) => {
    const at = element.closest(".fui-Radio, .fui-Input, .fui-Checkbox") ?? element;
    const { width, height } = at.getBoundingClientRect();
    const isHidden = element.classList.contains("unseen") || width === 0;
    return isHidden || (width >= 44 && height >= 44)
      ? []
      : [`small: ${width} x ${height}: ${at.outerHTML}`];
  });
}

/** Two things to press or type in that a listener cannot tell apart: one name twice in one group. */
function namedTwice(): string[] {
  const seen = new Set<string>();
  const numbers = new Map([...document.querySelectorAll("*")].map((each, at) => [each, at]));
  const controls = [...document.querySelectorAll<HTMLElement>("button, select, input, summary, a")];
  return controls.flatMap((control) => {
    if (control.offsetParent === null || control.ariaHidden === "true") return [];
    const label = (control as HTMLInputElement).labels?.[0]?.textContent ?? "";
    const name = control.ariaLabel ?? (label === "" ? control.textContent : label);
    const group = control.closest("li, fieldset, section, [role=group], [role=radiogroup]");
    const key = `${control.tagName} ${name.trim()} ${String(numbers.get(group ?? document.body))}`;
    if (name.trim() === "") return [`no name: ${control.outerHTML}`];
    if (seen.has(key)) return [`named twice: ${name.trim()}`];
    seen.add(key);
    return [];
  });
}

/** What was pressed took itself away, and who works by keyboard would begin again at the top. */
function focusIsLost(): string[] {
  const isLost = document.activeElement === document.body && document.documentElement.dataset.used;
  return isLost ? ["nothing has the focus"] : [];
}

/** The name of the next step broken at its hyphen, where a pane of this width has room for it. */
function brokenSteps(): string[] {
  const words = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const found: string[] = [];
  for (let node = words.nextNode(); node !== null; node = words.nextNode()) {
    const at = node.textContent?.search(/\S+-\S+/) ?? -1;
    if (at < 0 || innerWidth < 300 || node.parentElement?.closest(".way-on button") === null)
      continue;
    const range = document.createRange();
    range.setStart(node, at);
    range.setEnd(node, node.textContent?.length ?? at);
    const lines = new Set([...range.getClientRects()].map(({ top }) => Math.round(top)));
    if (lines.size > 1) found.push(`broken: ${node.textContent ?? ""}`);
  }
  return found;
}

/** A sentence set apart that begins with a small letter, unless a unit or a sign stands first. */
function smallBeginnings(): string[] {
  const said = [...document.querySelectorAll(".say > span:last-child")];
  return said.flatMap((each) => {
    const heard = each.querySelector(".unseen")?.textContent ?? "";
    const words = each.textContent.slice(heard.length).trim();
    return /^\p{Ll}{2}/u.test(words) && !/^(pH|mL|mg|mol)\b/.test(words)
      ? [`begins small: ${words.slice(0, 60)}`]
      : [];
  });
}

/** A space at the edge of a piece of a button's text: a button drops it, "Next:Lye". */
function runTogether(): string[] {
  return [...document.querySelectorAll("button")].flatMap((button) => {
    const isRow = getComputedStyle(button).display.includes("flex");
    const isRun = [...button.childNodes].some(
      (piece) =>
        piece.nodeType === Node.TEXT_NODE &&
        ((piece.nextSibling instanceof Element && /\s$/.test(piece.textContent ?? "")) ||
          (piece.previousSibling instanceof Element && /^\s/.test(piece.textContent ?? ""))),
    );
    return isRow && isRun ? [`run together: ${button.textContent}`] : [];
  });
}

/** Each fault of what is on screen, in words. */
export async function screenFaults(
  page: Page,
  width: number,
  rules: Rules | "none" = "all",
): Promise<string[]> {
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  return [
    ...(rules === "none" ? [] : await violations(page, [], rules)),
    ...(wide > width ? [`${wide} px wide`] : []),
    ...(await page.evaluate(tooSmall)),
    ...(await page.evaluate(namedTwice)),
    ...(await page.evaluate(focusIsLost)),
    ...(await page.evaluate(smallBeginnings)),
    ...(await page.evaluate(brokenSteps)),
    ...(await page.evaluate(runTogether)),
  ];
}
