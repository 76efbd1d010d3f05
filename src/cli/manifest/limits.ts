/** What the maker's reference allows, as data. Sources are named with each table. */

export const reference = "office-js-docs-reference, docs/manifest";
export const ordering = "office-js-docs-pr, docs/develop/manifest-element-ordering.md";

/** The order in which children must stand; those not named here have no order of their own. */
export const orders: Readonly<Record<string, readonly string[]>> = {
  OfficeApp: [
    "Id",
    "AlternateId",
    "Version",
    "ProviderName",
    "DefaultLocale",
    "DisplayName",
    "Description",
    "IconUrl",
    "HighResolutionIconUrl",
    "SupportUrl",
    "AppDomains",
    "Hosts",
    "Requirements",
    "DefaultSettings",
    "Permissions",
    "VersionOverrides",
  ],
  VersionOverrides: ["Description", "Requirements", "Hosts", "Resources"],
  "VersionOverrides/Hosts/Host": ["Runtimes", "AllFormFactors", "DesktopFormFactor"],
  DesktopFormFactor: ["GetStarted", "FunctionFile", "ExtensionPoint"],
  GetStarted: ["Title", "Description", "LearnMoreUrl"],
  "AllFormFactors/ExtensionPoint": ["Script", "Page", "Metadata", "Namespace"],
  Group: ["Label", "Icon", "Control"],
  Control: ["Label", "Supertip", "Icon", "Action"],
  Supertip: ["Title", "Description"],
  Resources: ["bt:Images", "bt:Urls", "bt:ShortStrings", "bt:LongStrings"],
};

/** The longest DefaultValue of an element, in characters. */
export const longest: Readonly<Record<string, number>> = {
  DisplayName: 125,
  Description: 250,
  "bt:ShortStrings/bt:String": 125,
  "bt:LongStrings/bt:String": 250,
  "bt:Url": 2048,
  "bt:Image": 2048,
  IconUrl: 2048,
  HighResolutionIconUrl: 2048,
  SupportUrl: 2048,
};

/** The longest name of a resource. */
export const longestName = 32;

/** Pixels of the icons that must be there, by the element that names one. */
export const iconSizes = { IconUrl: 32, HighResolutionIconUrl: 64 } as const;
export const ribbonIconSizes = [16, 32, 80] as const;
