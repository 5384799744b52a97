/** Joins the class names that hold; anything false or absent is left out. */
export function classes(...names: readonly (string | false | undefined)[]): string {
  return names.filter((name) => typeof name === 'string' && name !== '').join(' ');
}
