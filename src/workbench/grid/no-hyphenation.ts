/**
 * Stands in for the hyphenation dictionaries of the renderer (see webpack.config.js): cells are not
 * hyphenated, and the dictionaries are 5 MB.
 */
export {};
