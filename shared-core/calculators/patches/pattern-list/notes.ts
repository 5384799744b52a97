import type { Note } from '#core/calculators/explanation';
import { givenLength, lengthDown, lengthUp, sizeQuantity, yardageUp } from '#core/calculators/quantities';
import { outlineBounds } from '#core/calculators/outline/outline-measures';
import { lengthNearest } from '#core/calculators/quantities';
import { PIECING_CAUTIONS } from '../piecing-cautions';
import type { FabricOfPattern, PatternListWork } from './work';

export function patternListNotes(work: PatternListWork): readonly Note[] {
  return [
    ...work.fabrics.flatMap((fabric) => fabricNote(fabric, work)),
    ...bindingNote(work),
    ...sizeNote(work),
    ...PIECING_CAUTIONS,
  ];
}

function fabricNote(
  { fabric, needed, stated, verdict }: FabricOfPattern,
  { input }: PatternListWork,
): readonly Note[] {
  if (stated === null || verdict === null || verdict === 'enough') return [];
  const name = fabric.replace(/[{}]/gu, '');
  const values = { stated: givenLength(stated, 'yardage'), needed: yardageUp(needed, input.yardageStep) };
  return verdict === 'short'
    ? [
        {
          kind: 'warning',
          says: `${name}: the pattern asks for {stated}, but its own patches take {needed}. Check the list before you cut.`,
          values,
        },
      ]
    : [
        {
          kind: 'tip',
          says: `${name}: the pattern asks for {stated}; {needed} would do, with nothing extra for mistakes.`,
          values,
        },
      ];
}

function bindingNote({ binding }: PatternListWork): readonly Note[] {
  if (binding === null || binding.given >= binding.needed) return [];
  return [
    {
      kind: 'warning',
      says: 'The pattern’s binding strips give {given}, and your edge needs {needed}. Cut one more strip, or see the binding stage.',
      values: { given: lengthDown(binding.given), needed: lengthUp(binding.needed) },
    },
  ];
}

function sizeNote({ otherSize, input }: PatternListWork): readonly Note[] {
  if (otherSize === null) return [];
  const { width, length } = outlineBounds(input.outline);
  return [
    {
      kind: 'warning',
      says: 'The pattern finishes at {pattern}, and your project is {project}. Change the project’s size, or the list.',
      values: {
        pattern: sizeQuantity(givenLength(otherSize.width), givenLength(otherSize.length)),
        project: sizeQuantity(lengthNearest(width), lengthNearest(length)),
      },
    },
  ];
}
