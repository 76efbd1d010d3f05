/** What the page imports when it is readable: the grid, and plain tables of what the grid holds. */
export { mountGrid } from "./mount";
export { PlainView } from "../plain/plain-view";
