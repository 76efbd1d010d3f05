/** What the page reads when a file is opened or saved for the first time. */
export { FileWorker } from "./file-worker";
export { fileSnapshot } from "./file-snapshot";
export { isRefused, Session } from "./session";
