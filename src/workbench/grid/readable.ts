/**
 * What the embedded spreadsheet draws around the sheet has buttons without names, and Tab comes to its
 * drawings before anything else on the page. Both are mended here, and again when it makes parts anew.
 */
/** Null takes an attribute away. */
type Attributes = Readonly<Record<string, string | null>>;

const named = (name: string): Attributes => ({ "aria-label": name });
const silent: Attributes = { "aria-hidden": "true" };

/** Later rows win over earlier ones. */
const mended: readonly (readonly [selector: string, attributes: Attributes])[] = [
  ['[data-u-comp="defined-name"] input', named("Go to cell")],
  ['[data-u-comp="defined-name"] a', { role: "button", ...named("Named cells") }],
  ['[data-u-comp="formula-bar"] button', named("Taller formula line")],
  ['[data-u-comp="sheet-bar-append-button"]', named("New sheet")],
  ['[data-slot] > [data-u-comp="sheet-bar-append-button"]', named("All sheets")],
  // said of what is around the button
  ["div[aria-haspopup]", { "aria-haspopup": null, "aria-expanded": null }],
  ['[data-u-command="sheet.command.toggle-gridlines"]', named("Grid lines")],
  ['footer section [data-u-comp="button"]:first-child', named("Smaller")],
  ['footer section [data-u-comp="button"]:not(:first-child, [aria-haspopup])', named("Larger")],
  ['footer [data-u-comp="button"][aria-haspopup]', { "aria-description": "Size of the sheet" }],
  // the buttons beside the slide do the same, and have names
  ["[role=track]", { ...silent, role: "presentation" }],
  ["[role=handle]", { role: "presentation", tabindex: "-1" }],
  // two of them, told apart by nothing: they speak when something is put into them
  ["section[aria-live]", { role: "status", ...named("Messages of the sheet") }],
  ["svg", silent],
  // they take the keyboard when they are pressed, and F6 goes to the cells: Tab could not leave them
  ["canvas", { tabindex: "-1" }],
  ['[data-u-comp="editor"]', { role: "textbox", tabindex: "-1", ...named("Cell") }],
  ['[data-u-comp="editor"][id$="FORMULA_BAR"]', named("Formula line")],
];

function set(element: Element, attributes: Attributes): void {
  for (const [name, value] of Object.entries(attributes)) {
    if (element.getAttribute(name) === value) continue;
    if (value === null) element.removeAttribute(name);
    else element.setAttribute(name, value);
  }
}

/** The editor of the formula line hangs beside all parts of the page. */
const besideAll = { role: "region", ...named("Formula line") };

function mend(root: ParentNode): void {
  for (const [selector, attributes] of mended) {
    for (const element of root.querySelectorAll(selector)) set(element, attributes);
  }
}

/**
 * @param container what the spreadsheet was put into
 * @param body where it hangs what must stand above everything else, the formula line's editor among it
 */
export function makeReadable(container: HTMLElement, body: HTMLElement): void {
  const all = () => {
    mend(container);
    for (const element of body.querySelectorAll(":scope > div")) {
      mend(element);
      if (element.querySelector('[data-u-comp="editor"]')) set(element, besideAll);
    }
  };
  all();
  const watching = new MutationObserver(all);
  const made = { childList: true, subtree: true, attributeFilter: ["aria-expanded", "tabindex"] };
  watching.observe(container, made);
  watching.observe(body, { childList: true });
}
