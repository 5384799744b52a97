import { z } from 'zod';
import { lengthFromInches } from '#core/units/length';
import { countField, lengthField } from './fields';

const inches = lengthFromInches;

/** How labels are arranged on a sheet: all of one size, in a grid, measured from the upper left corner of the paper. */
export const labelSheetSchema = z
  .object({
    across: countField({ title: 'Labels across', minimum: 1, maximum: 12 }),
    down: countField({ title: 'Labels down', minimum: 1, maximum: 30 }),
    width: lengthField({ title: 'Width of a label', minimum: inches(1.25), maximum: inches(11) }),
    height: lengthField({ title: 'Height of a label', minimum: inches(3 / 4), maximum: inches(11) }),
    gapAcross: lengthField({ title: 'Gap beside a label', minimum: inches(0), maximum: inches(4) }),
    gapDown: lengthField({ title: 'Gap below a label', minimum: inches(0), maximum: inches(4) }),
    left: lengthField({ title: 'Left margin', minimum: inches(0), maximum: inches(4) }),
    top: lengthField({ title: 'Top margin', minimum: inches(0), maximum: inches(4) }),
  })
  .readonly();
export type LabelSheet = z.infer<typeof labelSheetSchema>;

/** Plain paper to cut apart; fits both letter and A4. */
export const STARTING_LABEL_SHEET: LabelSheet = {
  across: 3,
  down: 5,
  width: inches(2.5),
  height: inches(1.75),
  gapAcross: inches(1 / 8),
  gapDown: inches(1 / 8),
  left: inches(3 / 8),
  top: inches(3 / 4),
};
