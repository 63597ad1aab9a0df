import { find, LOCALE, overridesOf, valueOf, within, type Element } from './manifest-xml';

/** A text that is missing in one language would show two languages side by side. */
export const languageProblems = (root: Element): string[] => {
  const problems: string[] = [];
  const localesOf = (element: Element) => overridesOf(element).map(({ attributes }) => attributes.Locale ?? '');
  const nameOf = ({ name, attributes }: Element) => attributes.id ?? name;
  const spoken = [...within(root)].filter((element) => overridesOf(element).length > 0);
  const all = new Set(spoken.flatMap(localesOf));
  for (const element of spoken) {
    const locales = localesOf(element);
    for (const locale of locales) {
      if (!LOCALE.test(locale)) problems.push(`${nameOf(element)}: "${locale}" is not a language and a country`);
      if (locale === valueOf(find(root, 'DefaultLocale')))
        problems.push(`${nameOf(element)}: ${locale} is the default already`);
    }
    if (new Set(locales).size !== locales.length) problems.push(`${nameOf(element)} is given twice in one language`);
    for (const locale of all)
      if (!locales.includes(locale)) problems.push(`${nameOf(element)} is not given in ${locale}`);
  }
  const host = find(root, 'VersionOverrides', 'Hosts', 'Host');
  const fixed = [
    find(host, 'Runtimes', 'Runtime'),
    ...['Script', 'Namespace'].map((name) => {
      const element = find(host, 'AllFormFactors', 'ExtensionPoint', name);
      return find(element, 'SourceLocation') ?? element;
    }),
  ].map((element) => element?.attributes.resid);
  for (const element of spoken)
    if (fixed.includes(element.attributes.id)) problems.push(`${nameOf(element)} must be the same in every language`);
  return problems;
};
