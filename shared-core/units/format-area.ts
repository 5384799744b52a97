import { decimalText } from './decimal-text';
import { UNITS_PER_INCH, UNITS_PER_METER, UNITS_PER_MILLIMETER, UNITS_PER_YARD } from './length';
import type { LengthDisplay } from './unit-system';

/**
 * `212.5 sq in` or `3.28 sq yd` from one square yard up; `150.3 cm²` or `1.25 m²` from one square meter up. `squareUnits`
 * is a number of (1/320 mm)², whole or not; it is rounded to the nearest last digit shown. Throws RangeError unless finite.
 */
export function formatArea(squareUnits: number, display: LengthDisplay): string {
  const { side, name, places } = areaUnit(Math.abs(squareUnits), display);
  return `${decimalText(squareUnits / side ** 2, places).replace('-', '−')} ${name}`;
}

function areaUnit(size: number, display: LengthDisplay) {
  if (display.system === 'inch') {
    return size < UNITS_PER_YARD ** 2
      ? { side: UNITS_PER_INCH, name: 'sq in', places: 1 }
      : { side: UNITS_PER_YARD, name: 'sq yd', places: 2 };
  }
  return size < UNITS_PER_METER ** 2
    ? { side: 10 * UNITS_PER_MILLIMETER, name: 'cm²', places: 1 }
    : { side: UNITS_PER_METER, name: 'm²', places: 2 };
}
