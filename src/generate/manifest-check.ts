import { languageProblems } from './manifest-languages';
import { find, LOCALE, parse, valueOf, valuesOf, within, type Element } from './manifest-xml';

/**
 * Checks an Excel add-in manifest without asking any service. The rules are those that Microsoft publishes for the
 * add-in only manifest with a shared runtime ([MS-OWEMXML] for order and lengths, the Office Add-ins documentation
 * for the shared runtime and the icons), as read in 2026-08.
 */
export interface ManifestFiles {
  /** Width and height of a PNG that the add-in would serve at this path, if there is one. */
  pngSize(path: string): { width: number; height: number } | undefined;
}

/** Children of each element in the order that the schema demands; those without `?` must be there, `*` may repeat. */
const CHILDREN: Record<string, string> = {
  OfficeApp:
    'Id Version ProviderName DefaultLocale DisplayName Description IconUrl HighResolutionIconUrl SupportUrl AppDomains? ' +
    'Hosts Requirements DefaultSettings Permissions VersionOverrides',
  Description: 'Override?*',
  SupportUrl: 'Override?*',
  AppDomains: 'AppDomain*',
  Requirements: 'Sets',
  Sets: 'Set*',
  DefaultSettings: 'SourceLocation',
  VersionOverrides: 'Hosts Resources',
  'Host:Workbook': 'Runtimes AllFormFactors DesktopFormFactor',
  Runtimes: 'Runtime',
  AllFormFactors: 'ExtensionPoint',
  'ExtensionPoint:CustomFunctions': 'Script Page Metadata Namespace',
  Script: 'SourceLocation',
  Page: 'SourceLocation',
  Metadata: 'SourceLocation',
  DesktopFormFactor: 'GetStarted? FunctionFile ExtensionPoint',
  GetStarted: 'Title Description LearnMoreUrl',
  'ExtensionPoint:PrimaryCommandSurface': 'OfficeTab',
  OfficeTab: 'Group*',
  Group: 'Label Icon Control*',
  'Control:Button': 'Label Supertip Icon Action',
  Supertip: 'Title Description',
  Icon: 'Image*',
  // One pane only: an action may not name another one (TaskpaneId).
  'Action:ShowTaskpane': 'SourceLocation',
  Resources: 'Images Urls ShortStrings LongStrings',
  Images: 'Image*',
  Urls: 'Url*',
  Url: 'Override?*',
  ShortStrings: 'String*',
  LongStrings: 'String*',
  String: 'Override?*',
};

/** The resource list in which an element's resid must be found. */
const RESOURCE_OF: Record<string, string> = {
  Image: 'Images',
  SourceLocation: 'Urls',
  FunctionFile: 'Urls',
  Runtime: 'Urls',
  LearnMoreUrl: 'Urls',
  Label: 'ShortStrings',
  Title: 'ShortStrings',
  Namespace: 'ShortStrings',
  Description: 'LongStrings',
};

const LONGEST: Record<string, number> = { ShortStrings: 125, LongStrings: 250, Urls: 2048, Images: 2048 };
const REQUIREMENTS: Record<string, string> = { SharedRuntime: '1.1', CustomFunctionsRuntime: '1.3', ExcelApi: '1.9' };

const orderProblems = (root: Element): string[] =>
  [...within(root)].flatMap((element) => {
    const rule = CHILDREN[`${element.name}:${element.attributes.type}`] ?? CHILDREN[element.name];
    if (rule === undefined)
      return element.children.length > 0 && !['Hosts', 'Host'].includes(element.name)
        ? [`${element.name} may not hold elements`]
        : [];
    const slots = rule.split(' ').map((slot) => /^(\w+)([?*]*)$/.exec(slot)!.slice(1) as [string, string]);
    const places = element.children.map((child) => slots.findIndex(([name]) => name === child.name));
    const problems: string[] = [];
    element.children.forEach((child, i) => {
      const place = places[i]!;
      if (place < 0) problems.push(`${element.name} may not hold ${child.name}`);
      else if (i > 0 && place < places[i - 1]!) problems.push(`${element.name}: ${child.name} is out of order`);
      else if (i > 0 && place === places[i - 1] && !slots[place]![1].includes('*'))
        problems.push(`${element.name}: ${child.name} is given twice`);
    });
    slots.forEach(([name, mark], place) => {
      if (!mark.includes('?') && !places.includes(place)) problems.push(`${element.name}: ${name} is missing`);
    });
    return problems;
  });

const headProblems = (root: Element): string[] => {
  const problems: string[] = [];
  const text = (name: string) => valueOf(find(root, name));
  if (root.name !== 'OfficeApp' || root.attributes.type !== 'TaskPaneApp')
    problems.push('the root is not a TaskPaneApp');
  if (!/^[0-9a-f]{8}-[0-9a-f]{4}-[1-5][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/i.test(text('Id')))
    problems.push('Id is not a GUID');
  if (!/^[1-9]\d{0,4}(\.\d{1,5}){0,3}$/.test(text('Version')))
    problems.push('Version is not one to four groups of digits, starting at 1.0');
  for (const [name, most] of [
    ['ProviderName', 125],
    ['DisplayName', 125],
    ['Description', 250],
  ] as const)
    if (valuesOf(find(root, name)).some((value) => value.length === 0 || value.length > most))
      problems.push(`${name} must have 1 to ${most} characters`);
  if (!LOCALE.test(text('DefaultLocale'))) problems.push('DefaultLocale is not a language and a country');
  if (text('Permissions') !== 'ReadWriteDocument') problems.push('Permissions must be ReadWriteDocument');
  if (find(root, 'Hosts', 'Host')?.attributes.Name !== 'Workbook') problems.push('the host is not Workbook');
  const sets = Object.fromEntries(
    (find(root, 'Requirements', 'Sets')?.children ?? []).map((set) => [set.attributes.Name, set.attributes.MinVersion]),
  );
  // A newer set here would hide the add-in; newer calls are asked for when they are needed.
  for (const name of new Set([...Object.keys(REQUIREMENTS), ...Object.keys(sets)]))
    if (sets[name] !== REQUIREMENTS[name])
      problems.push(`requirement ${name} is ${sets[name] ?? 'missing'}, expected ${REQUIREMENTS[name] ?? 'none'}`);
  return problems;
};

const urlProblems = (root: Element): string[] => {
  const named = ['IconUrl', 'HighResolutionIconUrl', 'SupportUrl', 'AppDomain', 'Url'];
  return [...within(root)]
    .filter(
      (e) => named.includes(e.name) || (['SourceLocation', 'Image'].includes(e.name) && e.attributes.DefaultValue),
    )
    .flatMap(valuesOf)
    .filter((url) => !/^https:\/\/[^\s/]+(\/\S*)?$/.test(url))
    .map((url) => `not an https address: ${url}`);
};

const resourceProblems = (root: Element): string[] => {
  const problems: string[] = [];
  const lists = find(root, 'VersionOverrides', 'Resources')?.children ?? [];
  const home = new Map<string, string>();
  for (const list of lists)
    for (const entry of list.children) {
      const id = entry.attributes.id ?? '';
      if (id.length === 0 || id.length > 32) problems.push(`resource id must have 1 to 32 characters: ${id}`);
      if (home.has(id)) problems.push(`resource ${id} is defined twice`);
      home.set(id, list.name);
      const most = LONGEST[list.name] ?? 0;
      if (valuesOf(entry).some(({ length }) => length === 0 || length > most))
        problems.push(`resource ${id} must have 1 to ${LONGEST[list.name]} characters`);
    }
  const used = new Set<string>();
  const overrides = find(root, 'VersionOverrides', 'Hosts');
  for (const element of overrides ? within(overrides) : []) {
    if (!(element.name in RESOURCE_OF)) continue;
    const { resid } = element.attributes;
    if (resid === undefined) {
      problems.push(`${element.name} has no resid`);
      continue;
    }
    used.add(resid);
    if (home.get(resid) !== RESOURCE_OF[element.name])
      problems.push(`${element.name}: ${resid} is not defined in ${RESOURCE_OF[element.name]}`);
  }
  for (const id of home.keys()) if (!used.has(id)) problems.push(`resource ${id} is never used`);
  return problems;
};

const runtimeProblems = (root: Element): string[] => {
  const problems: string[] = [];
  const host = find(root, 'VersionOverrides', 'Hosts', 'Host');
  const runtime = find(host, 'Runtimes', 'Runtime')?.attributes;
  if (runtime?.lifetime !== 'long') problems.push('the runtime is not long-lived');
  const places: Record<string, Element | undefined> = {
    Page: find(host, 'AllFormFactors', 'ExtensionPoint', 'Page', 'SourceLocation'),
    FunctionFile: find(host, 'DesktopFormFactor', 'FunctionFile'),
  };
  for (const action of host ? within(host) : [])
    if (action.name === 'Action') places[`Action`] = find(action, 'SourceLocation');
  for (const [name, element] of Object.entries(places))
    if (element?.attributes.resid !== runtime?.resid) problems.push(`${name} is not the page of the shared runtime`);
  const resource = (resid: string | undefined) =>
    [...within(root)].find((element) => element.attributes.id === resid && element.name === 'Url');
  if (valueOf(resource(runtime?.resid)) !== valueOf(find(root, 'DefaultSettings', 'SourceLocation')))
    problems.push('the shared runtime is not the default page');
  const namespace = find(host, 'AllFormFactors', 'ExtensionPoint', 'Namespace')?.attributes.resid;
  const name = valueOf([...within(root)].find((e) => e.name === 'String' && e.attributes.id === namespace));
  if (!/^[A-Za-z][A-Za-z0-9._]*$/.test(name))
    problems.push('the namespace is not letters, digits, dots or underscores');
  const ids = [...(host ? within(host) : [])]
    .filter((e) => ['Group', 'Control'].includes(e.name))
    .map((e) => e.attributes.id);
  if (new Set(ids).size !== ids.length || ids.includes(undefined))
    problems.push('ribbon ids are missing or not unique');
  return problems;
};

const iconProblems = (root: Element, files: ManifestFiles): string[] => {
  const problems: string[] = [];
  const wanted = (what: string, url: string, size: number) => {
    const png = files.pngSize(/^https:\/\/[^/]+\/(.*)$/.exec(url)?.[1] ?? url);
    if (!png) problems.push(`${what}: no picture at ${url}`);
    else if (png.width !== size || png.height !== size)
      problems.push(`${what}: ${url} is ${png.width} × ${png.height}, expected ${size} × ${size}`);
  };
  wanted('IconUrl', valueOf(find(root, 'IconUrl')), 32);
  wanted('HighResolutionIconUrl', valueOf(find(root, 'HighResolutionIconUrl')), 64);
  const pictures = new Map(
    (find(root, 'VersionOverrides', 'Resources', 'Images')?.children ?? []).map((e) => [e.attributes.id, valueOf(e)]),
  );
  for (const icon of [...within(root)].filter((element) => element.name === 'Icon')) {
    const sizes = icon.children.map((image) => image.attributes.size);
    for (const size of ['16', '32', '80']) if (!sizes.includes(size)) problems.push(`Icon: size ${size} is missing`);
    for (const { attributes } of icon.children)
      wanted('Icon', pictures.get(attributes.resid) ?? '', Number(attributes.size));
  }
  return problems;
};

/** Every rule that the manifest breaks, in words; none means that it is fit to be loaded. */
export const manifestProblems = (xml: string, files: ManifestFiles): string[] => {
  let root: Element;
  try {
    root = parse(xml);
  } catch (error) {
    return [`not well-formed: ${error instanceof Error ? error.message : String(error)}`];
  }
  return [
    ...orderProblems(root),
    ...headProblems(root),
    ...urlProblems(root),
    ...resourceProblems(root),
    ...runtimeProblems(root),
    ...languageProblems(root),
    ...iconProblems(root, files),
  ];
};
