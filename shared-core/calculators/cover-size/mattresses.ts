import { type Length, lengthFromInches, lengthFromMillimeters } from '#core/units/length';

export interface Mattress {
  readonly name: string;
  readonly width: Length;
  readonly length: Length;
}

const inch = (name: string, width: number, length: number): Mattress => ({
  name,
  width: lengthFromInches(width),
  length: lengthFromInches(length),
});
const metric = (name: string, width: number, length: number): Mattress => ({
  name,
  width: lengthFromMillimeters(10 * width),
  length: lengthFromMillimeters(10 * length),
});

/** Common practice; lists differ by an inch and more, so the note asks to measure. The metric ones are from memory. */
export const MATTRESSES: Readonly<Record<'inch' | 'metric', readonly Mattress[]>> = {
  inch: [
    inch('Crib', 28, 52),
    inch('Twin', 39, 75),
    inch('Full', 54, 75),
    inch('Queen', 60, 80),
    inch('King', 76, 80),
    inch('King, long', 72, 84),
  ],
  metric: [
    metric('Crib', 60, 120),
    metric('Single', 90, 200),
    metric('Single, wide', 100, 200),
    metric('Double, narrow', 140, 200),
    metric('Double', 160, 200),
    metric('Double, wide', 180, 200),
  ],
};
