import { type Length, UNITS_PER_INCH, UNITS_PER_METER } from './length';

declare const areaBrand: unique symbol;

/** An area as a whole number of (1/320 mm)²: the product of two lengths, exact up to about 88,000 m². */
export type Area = number & { readonly [areaBrand]: 'Area' };

/** The only maker of an Area. Throws RangeError unless `units` is a whole safe number. */
export function areaFromUnits(units: number): Area {
  if (!Number.isSafeInteger(units)) throw new RangeError(`Not an area in whole units: ${String(units)}`);
  return (units === 0 ? 0 : units) as Area;
}

export function areaOfRectangle(width: Length, length: Length): Area {
  return areaFromUnits(width * length);
}

export function areaAdd(first: Area, ...more: readonly Area[]): Area {
  return areaFromUnits(more.reduce<number>((sum, area) => sum + area, first));
}

export function areaSubtract(from: Area, taken: Area): Area {
  return areaFromUnits(from - taken);
}

export function areaInSquareInches(area: Area): number {
  return area / UNITS_PER_INCH ** 2;
}

export function areaInSquareMeters(area: Area): number {
  return area / UNITS_PER_METER ** 2;
}
