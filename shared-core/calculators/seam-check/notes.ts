import { assertNever } from '#core/assert-never';
import { cautionNotes } from '../caution-notes';
import type { Note } from '../explanation';
import { countQuantity, fineLength, lengthNearest } from '../quantities';
import type { SeamCheckInput } from './input';
import { actionOf } from './verdicts';
import type { Whole } from './whole';
import type { SeamCheckWork } from './work';

export function seamCheckNotes(input: SeamCheckInput, work: SeamCheckWork): readonly Note[] {
  const { ring, isMixed, scatter, seam, cut, made } = work;
  const mayBeCut = seam !== null && cut !== null && Math.abs(seam.value) <= seam.within;
  const mixed: Note = {
    kind: 'warning',
    says: 'All that you measured has the same share of seams, so a patch cut wrong looks like a seam sewn wrong. Measure a few patches before you sew them, or say that they are cut right.',
    values: {},
  };
  const checkCuts: Note = {
    kind: 'tip',
    says: 'If you have checked the patches with a ruler, say that they are cut right. What a seam takes is then known better.',
    values: {},
  };
  const noEnds: Note = {
    kind: 'warning',
    says: 'To tell whether the ring will lie flat, measure the same wedges at the inner and at the outer end of their seams.',
    values: {},
  };
  const moved: Note = {
    kind: 'tip',
    says: 'After you move the needle or the guide, sew and measure new blocks. Delete what you measured before.',
    values: {},
  };
  return [
    ...actionNotes(input, work),
    ...(isMixed && scatter !== null ? [mixed] : []),
    ...(mayBeCut ? [checkCuts] : []),
    ...(input.ring !== null && ring === null && made.length > 0 ? [noEnds] : []),
    ...taperNotes(work),
    ...(work.move.rounded === 0 ? [] : [moved]),
    ...cautionNotes('rotaryBlade', 'machineNeedle', 'iron', 'usedBlades'),
  ];
}

/** What to do now, in one sentence. */
function actionNotes(input: SeamCheckInput, work: SeamCheckWork): readonly Note[] {
  const { whole, top, seam, scatter, made, needed } = work;
  if (scatter === null)
    return [
      {
        kind: 'warning',
        says: 'You need at least {needed}, and you have {made}. Until then nobody can tell an error from chance.',
        values: {
          needed: countQuantity(needed, ['measurement', 'measurements']),
          made: countQuantity(made.length, ['measurement', 'measurements']),
        },
      },
    ];
  if (whole === null && seam !== null) return [];
  if (whole === null || top === null)
    return [
      {
        kind: 'warning',
        says: 'These measurements scatter too much to know what a seam takes. Measure more blocks, with more seams in each.',
        values: {},
      },
    ];
  return [topNote(whole, top, actionOf(input, work))];
}

function topNote(
  { kind, size }: Whole,
  { value, within }: NonNullable<SeamCheckWork['top']>,
  action: ReturnType<typeof actionOf>,
): Note {
  const it = kind === 'ring' ? 'ring' : 'top';
  const measures = fineLength(value, 'nearest');
  const off = fineLength(Math.abs(value - size), 'up');
  switch (action) {
    case 'plan':
    case 'measure':
      return {
        kind: 'warning',
        says: `The ${it} may measure {low} to {high}. Measure more blocks before you change anything.`,
        values: { low: fineLength(value - within, 'down'), high: fineLength(value + within, 'up') },
      };
    case 'go-on':
      return {
        kind: 'tip',
        says: `Go on as you are, and cut the next border to what the ${it} measures, about {measures}.`,
        values: { measures },
      };
    case 'ease':
      return {
        kind: 'tip',
        says: `Cut the next border to what the ${it} should measure, {size}, and ease in the {off} that it is off.`,
        values: { size: lengthNearest(size), off },
      };
    case 'trim':
      return {
        kind: 'warning',
        says:
          kind === 'ring'
            ? 'Trim the outer edge of the ring, or it will be {off} too large from edge to edge.'
            : 'Trim each block to its size before you join it, or the top will be {off} too large.',
        values: { off },
      };
    case 'wider-border':
      return {
        kind: 'warning',
        says: `Make the next border wider by {half} on each side, or the ${it} will be {off} too small. Cut it to what the ${it} measures.`,
        values: { half: fineLength(Math.abs(value - size) / 2, 'up'), off },
      };
    default:
      return assertNever(action);
  }
}

function taperNotes({ ring }: SeamCheckWork): readonly Note[] {
  if (ring === null || Math.abs(ring.lacks) <= ring.within) return [];
  const half = fineLength(Math.abs(ring.taper) / 2, 'nearest');
  const says =
    ring.lacks > 0
      ? 'Sew the outer end of each seam {half} narrower than now, or the inner end wider. If some seams are sewn, sew them again.'
      : 'Sew the outer end of each seam {half} wider than now, or the inner end narrower. If some seams are sewn, sew them again.';
  return [{ kind: 'warning', says, values: { half } }];
}
