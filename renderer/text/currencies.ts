/** Every currency the system knows, by name: `US Dollar (USD)`. */
export function currencyOptions(
  locale: string,
): readonly { readonly value: string; readonly words: string }[] {
  const names = new Intl.DisplayNames(locale, { type: 'currency' });
  return Intl.supportedValuesOf('currency')
    .map((code) => ({ value: code, words: `${names.of(code) ?? code} (${code})` }))
    .toSorted((first, second) => first.words.localeCompare(second.words));
}
