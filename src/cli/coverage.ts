/** npm run bench:coverage: what the interval and the outlier test do in simulated titrations. */
import { tables } from "./coverage/tables";

console.log(tables());
