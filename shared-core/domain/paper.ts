import { lengthFromInches, lengthFromMillimeters } from '#core/units/length';

/** The papers that sheets are made for: US letter, and A4 of ISO 216. */
export const PAPERS = {
  letter: { width: lengthFromInches(8.5), height: lengthFromInches(11) },
  a4: { width: lengthFromMillimeters(210), height: lengthFromMillimeters(297) },
} as const;

export type SheetPaper = keyof typeof PAPERS;
