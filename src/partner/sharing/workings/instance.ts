/** A formula of the file that is to be written in plain functions. */
import type { Standing } from "./standing";
import type { Template } from "./template";

export interface Instance extends Standing {
  readonly template: Template;
}
