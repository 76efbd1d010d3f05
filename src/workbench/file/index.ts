/** What the page reads when a file is opened or saved for the first time. */
export { fileSnapshot } from "./file-snapshot";
export { newFile, readFile } from "./read-file";
export { layOut } from "../holding/lay-out";
export { Session } from "./session";
