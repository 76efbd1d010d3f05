/** One measure in a process of its own, its figures as JSON in a file: `npm run bench -- --against`. */
import { writeFileSync } from "node:fs";
import { measures } from "./measures";

const [, , name, build = "", answer = ""] = process.argv;
const measure = measures.find((each) => each.name === name);
writeFileSync(answer, JSON.stringify((await measure?.run(build)) ?? []));
