/** Styles are imported for their effect alone: the bundler puts them into the page. */
declare module "*.css";
