import { roundUpTo } from '#core/units/rounding';
import { cautionNotes } from '#core/calculators/caution-notes';
import type { Note } from '#core/calculators/explanation';
import { givenLength, lengthDown, lengthNearest } from '#core/calculators/quantities';
import { CENTER_CUT_NOTES } from '../center-notes';
import { type HoleSizeInput } from './input';
import { acrossOf, cutFor, type HoleSizeDetails } from './work';

export function holeSizeNotes(input: HoleSizeInput, details: HoleSizeDetails): readonly Note[] {
  return [
    ...passNotes(input, details),
    ...rulerNotes(details),
    {
      kind: 'tip',
      says: 'Cut a hole in a scrap quilted like this one, stay-stitch it, bind it and measure it: that gives the thickness of the binding and how much the edge draws in.',
      values: {},
    },
    ...CENTER_CUT_NOTES,
    ...cautionNotes('tree', 'flame'),
  ];
}

function rulerNotes({ diameter, exactDiameter, through }: HoleSizeDetails): readonly Note[] {
  if (through === null || diameter <= exactDiameter + 1) return [];
  return [
    {
      kind: 'tip',
      says: 'The next ruler size is {more} larger than you need.',
      values: { more: lengthNearest(diameter - exactDiameter) },
    },
  ];
}

/** A closed ring has to pass over an end; a slit lets the project be laid around. */
function passNotes(input: HoleSizeInput, { through, washed }: HoleSizeDetails): readonly Note[] {
  if (input.hasSlit) return [];
  if (input.passes === 0) {
    return [
      {
        kind: 'tip',
        says: 'A closed ring goes on over an end. Measure the widest thing it has to pass, such as a foot, a crank, a knob or the legs of a stand. Where nothing can be lifted off, as with a growing tree, plan a slit.',
        values: {},
      },
    ];
  }
  if (through === null) return washed < input.passes ? [tooNarrow(input, washed)] : [];
  const withSlit = roundUpTo(cutFor(input, acrossOf(input) + input.ease), input.rulerStep);
  return input.passes > acrossOf(input)
    ? [
        {
          kind: 'tip',
          says: 'The thing it goes over decides. With a slit, a hole of {cut} is enough.',
          values: { cut: lengthNearest(withSlit) },
        },
      ]
    : [];
}

function tooNarrow({ passes }: HoleSizeInput, washed: number): Note {
  return {
    kind: 'warning',
    says: 'The widest thing it goes over is {passes} across, and the washed hole is {washed}. Make the hole larger, or plan a slit.',
    values: { passes: givenLength(passes), washed: lengthDown(washed) },
  };
}
