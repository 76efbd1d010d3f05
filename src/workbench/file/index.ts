/** What the page reads when a file is opened or saved for the first time. */
export { fileSnapshot } from "./file-snapshot";
export { newFile, readFile } from "./read-file";
export { carriedHolds, carriedState } from "../acts/carried";
export { layOut, layOutAgain } from "../holding/lay-out";
export { Session } from "./session";
