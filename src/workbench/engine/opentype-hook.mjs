/**
 * Node only. The engine imports named parts of opentype.js, which offers them to bundlers alone: its
 * entry for Node has no named exports. Point Node to the file that bundlers take.
 */
export const resolve = (specifier, context, next) =>
  next(specifier === "opentype.js" ? "opentype.js/dist/opentype.mjs" : specifier, context);
