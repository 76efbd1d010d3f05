/**
 * The rules a manifest must keep, each with its source, since the maker's own validator needs the
 * network. The program refuses a manifest that breaks one, mostly without saying why.
 */
import {
  iconSizes,
  longest,
  longestName,
  ordering,
  orders,
  reference,
  ribbonIconSizes,
} from "./limits";
import { type Element, named, within } from "./parse";

export interface ManifestRule {
  readonly rule: string;
  readonly source: string;
  /** One sentence for each place that breaks it. */
  faults(root: Element): string[];
}

/** Every element with the names that lead to it: OfficeApp/Hosts/Host. */
function* placed(element: Element, above = ""): Generator<{ path: string; element: Element }> {
  const path = above === "" ? element.name : `${above}/${element.name}`;
  yield { path, element };
  for (const child of element.children) yield* placed(child, path);
}

const isAt = (path: string, place: string): boolean => path === place || path.endsWith(`/${place}`);

const at = ({ name, line }: Element): string => `${name} (line ${line})`;

const addressOf = (element: Element): string | undefined => {
  const value = element.attributes.DefaultValue ?? "";
  return /^[a-z]+:/i.test(value) ? value : undefined;
};

const addresses = (root: Element): { element: Element; address: string }[] =>
  [...within(root)].flatMap((element) => {
    const address = addressOf(element);
    return address === undefined ? [] : [{ element, address }];
  });

const outOfOrder = ({ path, element }: { path: string; element: Element }): string[] => {
  const order = Object.entries(orders).find(([place]) => isAt(path, place))?.[1];
  if (!order) return [];
  let reached = 0;
  return element.children.flatMap((child) => {
    const place = order.indexOf(child.name);
    if (place < 0) return [`${at(child)} has no place in ${element.name}`];
    if (place < reached) return [`${at(child)} must stand before ${order[reached] ?? ""}`];
    reached = place;
    return [];
  });
};

const pages = (root: Element): (string | undefined)[] =>
  [...placed(root)]
    .filter(({ path }) =>
      ["Runtime", "FunctionFile", "Page/SourceLocation", "Action/SourceLocation"].some((place) =>
        isAt(path, place),
      ),
    )
    .map(({ element }) => element.attributes.resid);

const sizeIn = (address: string): number => Number(/-(\d+)\.png(?:\?|$)/.exec(address)?.[1]);

/** What all of it needs; what needs more is asked for by the host where it is used. */
const setsNeeded = { CustomFunctionsRuntime: "1.3", SharedRuntime: "1.1", ExcelApi: "1.13" };

export const manifestRules: readonly ManifestRule[] = [
  {
    rule: "Elements stand in the order of the schema.",
    source: ordering,
    faults: (root) => [...placed(root)].flatMap(outOfOrder),
  },
  {
    rule: "The id is a GUID, and the version has four parts.",
    source: `${reference}/id.md, version.md`,
    faults: (root) => [
      ...named(root, "Id")
        .filter(({ text }) => !/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i.test(text))
        .map((element) => `${at(element)} is no GUID`),
      ...named(root, "Version")
        .filter(({ text }) => !/^\d+\.\d+\.\d+\.\d+$/.test(text))
        .map((element) => `${at(element)} has not four parts`),
    ],
  },
  {
    rule: "Texts and addresses are no longer than allowed.",
    source: `${reference}/displayname.md, description.md, resources.md`,
    faults: (root) =>
      [...placed(root)].flatMap(({ path, element }) => {
        const most = Object.entries(longest).find(([place]) => isAt(path, place))?.[1];
        const length = element.attributes.DefaultValue?.length ?? 0;
        return most !== undefined && length > most
          ? [`${at(element)} has ${length} characters, ${most} are allowed`]
          : [];
      }),
  },
  {
    rule: "Every resource that is named is defined, once, in at most 32 characters.",
    source: `${reference}/namespace.md, resources.md`,
    faults: (root) => {
      const defined = [...within(root)].flatMap(({ name, attributes }) =>
        // a picture inside an Icon only names one
        /^bt:(Image|Url|String)$/.test(name) && attributes.id !== undefined ? [attributes.id] : [],
      );
      return [
        ...[...within(root)].flatMap((element) => {
          const { resid } = element.attributes;
          return resid !== undefined && !defined.includes(resid)
            ? [`${at(element)} names ${resid}, which is not defined`]
            : [];
        }),
        ...defined
          .filter((name, place) => defined.indexOf(name) !== place)
          .map((name) => `${name} is defined twice`),
        ...defined
          .filter((name) => name.length > longestName)
          .map((name) => `${name} is longer than ${longestName} characters`),
      ];
    },
  },
  {
    rule: "Every address is https, on one base.",
    source: `${reference}/sourcelocation.md`,
    faults: (root) => {
      const all = addresses(root);
      const base = all
        .find(({ address }) => /taskpane\.html/.test(address))
        ?.address.replace(/taskpane\.html.*$/, "");
      if (base === undefined) return ["no address of the pane is given"];
      return all
        .filter(({ address }) => !address.startsWith("https://") || !address.startsWith(base))
        .map(({ element, address }) => `${at(element)} is at ${address}, not under ${base}`);
    },
  },
  {
    rule: "One page serves the runtime, the functions and the pane, and its runtime lives on.",
    source: "office-js-docs-pr, docs/develop/configure-your-add-in-to-use-a-shared-runtime.md",
    faults: (root) => [
      ...(new Set(pages(root)).size === 1 && pages(root).length === 4
        ? []
        : [`the pages are ${pages(root).join(", ")}`]),
      ...named(root, "Runtime")
        .filter(({ attributes }) => attributes.lifetime !== "long")
        .map((element) => `${at(element)} does not say lifetime="long"`),
      ...named(root, "TaskpaneId").map((element) => `${at(element)} must not be there`),
    ],
  },
  {
    rule: "Icons of 32 and 64 pixels stand for the add-in, of 16, 32 and 80 for each button and group.",
    source: `${reference}/iconurl.md, highresolutioniconurl.md, icon.md`,
    faults: (root) => [
      ...Object.entries(iconSizes).flatMap(([name, size]) => {
        const icons = named(root, name);
        const fits = icons.some((icon) => sizeIn(icon.attributes.DefaultValue ?? "") === size);
        return fits ? [] : [`${name} is no picture of ${size} pixels`];
      }),
      ...named(root, "Icon").flatMap((icon) => {
        const sizes = icon.children.map(({ attributes }) => Number(attributes.size));
        return ribbonIconSizes
          .filter((size) => !sizes.includes(size))
          .map((size) => `${at(icon)} lacks ${size} pixels`);
      }),
    ],
  },
  {
    rule: "It asks for the functions' runtime 1.3, the shared runtime and ExcelApi 1.13.",
    source:
      "office-js-docs-reference, requirement sets; without them an old program loads half of it",
    faults: (root) =>
      Object.entries(setsNeeded).flatMap(([name, version]) =>
        named(root, "Set").some(
          ({ attributes }) => attributes.Name === name && attributes.MinVersion === version,
        )
          ? []
          : [`${name} is not asked for in version ${version}`],
      ),
  },
];

/** Every fault of a well-formed manifest. */
export const manifestFaults = (root: Element): string[] =>
  manifestRules.flatMap(({ faults }) => faults(root));
