/** What the page imports when it is readable: the grid, plain tables of what it holds, and its files. */
export { announceKept, begin } from "../bar/begin";
export { chooser } from "../bar/choose";
export { Files } from "../bar/files";
export { greyButton } from "../bar/grey-button";
export { sampleFile } from "../bar/sample-file";
export { keepingInPage } from "../keeping/in-page";
export { mountGrid } from "./mount";
export { letTabComeToButtons } from "./by-keyboard";
export { letFingersScroll } from "../swipe";
export { makeReadable } from "./readable";
export { PlainView } from "../plain/plain-view";
export { offerLists } from "../choosing/offer";
export { watchTools } from "../tools/watch";
export { snapshotOf } from "../snapshot";
