/** Whether the compiler takes a mutated source at all: a unit that is none is no program. */
import { join } from "node:path";
import ts from "typescript";
import { root } from "../rules/sources-of";
import type { Mutation } from "./mutations";

const read = (path: string) => ts.sys.readFile(path);
const { config } = ts.readConfigFile(join(root, "tsconfig.json"), read) as { config: unknown };
const { options, fileNames } = ts.parseJsonConfigFileContent(config, ts.sys, root);
const sources = fileNames.filter((path) => /\/src\/(core|functions)\//.test(path));

/** What was read once, but for the file that is mutated. */
const whole = new Map<string, ts.SourceFile>();

export function isRefused({ file, start, end, text }: Mutation): boolean {
  const host = ts.createCompilerHost(options);
  const readFile = host.readFile.bind(host);
  const mutated = (code: string) => code.slice(0, start) + text + code.slice(end);
  host.getSourceFile = (path, target) => {
    const code = readFile(path);
    if (code === undefined) return undefined;
    const isIt = path === join(root, file);
    const known = isIt ? undefined : whole.get(path);
    const source = known ?? ts.createSourceFile(path, isIt ? mutated(code) : code, target);
    if (!isIt) whole.set(path, source);
    return source;
  };
  const program = ts.createProgram(sources, { ...options, noEmit: true }, host);
  return program
    .getSourceFiles()
    .filter(({ fileName }) => sources.includes(fileName))
    .some((source) => program.getSemanticDiagnostics(source).length > 0);
}
