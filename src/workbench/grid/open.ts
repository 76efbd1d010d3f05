/** What the page imports when it is readable: the grid, plain tables of what it holds, and its files. */
export { Files } from "../bar/files";
export { greyButton } from "../bar/grey-button";
export { mountGrid } from "./mount";
export { letTabComeToButtons } from "./by-keyboard";
export { makeReadable } from "./readable";
export { PlainView } from "../plain/plain-view";
export { snapshotOf } from "../snapshot";
