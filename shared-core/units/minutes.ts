declare const minutesBrand: unique symbol;

/** A duration in whole minutes, not negative. */
export type Minutes = number & { readonly [minutesBrand]: 'Minutes' };

/** Nearly four years without a pause: nothing on a bench takes longer. */
export const MAX_MINUTES = 2_000_000;

/** The only maker of Minutes. Throws RangeError unless `minutes` is whole and from 0 to `MAX_MINUTES`. */
export function minutesFromWhole(minutes: number): Minutes {
  if (!Number.isInteger(minutes) || minutes < 0 || minutes > MAX_MINUTES) {
    throw new RangeError(`Not a duration in whole minutes: ${String(minutes)}`);
  }
  return (minutes === 0 ? 0 : minutes) as Minutes;
}

/** `2 h 20 min`, `45 min`, `3 h`, `0 min`. Takes a computed whole number too; throws RangeError as the maker does. */
export function formatMinutes(minutes: number): string {
  const whole = minutesFromWhole(minutes);
  const rest = whole % 60;
  const hours = (whole - rest) / 60;
  if (hours === 0) return `${rest} min`;
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
}
