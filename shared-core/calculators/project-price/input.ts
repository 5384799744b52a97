import { z } from 'zod';
import { choiceField, countField, minorField, numberField, percentField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { longarmPriceInputFromProject } from '../longarm-price/input';
import { workOutPrice } from '../longarm-price/work';

const most = 100_000_000;

const taxFields = {
  taxPercent: percentField({
    title: 'Sales tax or VAT',
    help: '0 if you charge none. Ask your tax office whether you have to.',
    minimum: 0,
    maximum: 100,
  }),
  taxIs: choiceField(['added', 'included'], {
    title: 'The price you name',
    help: 'Added: without tax, which comes on top. Included: with the tax in it.',
  }),
  taxOn: choiceField(['the-whole', 'each-one'], {
    title: 'Tax is rounded on',
    isSeldom: true,
    help: 'The whole order, or each project by itself. The two may differ by some cents.',
  }),
  taxHalves: choiceField(['up', 'down'], {
    title: 'Half a cent of tax goes',
    isSeldom: true,
    help: 'Up in most places. In some it is dropped.',
  }),
};

export const projectPriceInput = z
  .object({
    materials: minorField({
      title: 'Fabric, batting and thread',
      help: 'What it costs to buy all of it again, also what comes from your stash. It starts with a sample.',
      minimum: 0,
      maximum: most,
    }),
    longarm: minorField({
      title: 'Quilting, sent out',
      help: 'It starts with your longarm rate for this size. 0 if you quilt it at home.',
      minimum: 0,
      maximum: most,
    }),
    hours: numberField({
      title: 'Your hours',
      help: 'All stages together: estimated, or logged. It starts with a sample.',
      unit: 'hours',
      minimum: 0,
      maximum: 10_000,
    }),
    hourRate: minorField({ title: 'Your hourly rate', minimum: 0, maximum: 10_000_000 }),
    overheadPercent: percentField({
      title: 'Overhead',
      help: 'Machine, needles, power, room, fees: a part of materials, quilting and work together.',
      minimum: 0,
      maximum: 500,
    }),
    markupPercent: percentField({
      title: 'Added on top',
      help: 'Of everything above it, for profit and for what goes wrong.',
      minimum: 0,
      maximum: 500,
    }),
    alike: countField({ title: 'How many alike', isSeldom: true, minimum: 1, maximum: 1_000 }),
    priceStep: minorField({
      title: 'Round the price up to a whole',
      isSeldom: true,
      minimum: 1,
      maximum: 1_000_000,
    }),
    ...taxFields,
    cashStep: minorField({
      title: 'Cash is rounded to',
      help: 'Where the smallest coins are gone, a sum paid in cash is rounded to the nearest of these.',
      isSeldom: true,
      minimum: 1,
      maximum: 10_000,
    }),
    depositPercent: percentField({
      title: 'Deposit',
      help: 'Of what is to pay. 0 for none.',
      minimum: 0,
      maximum: 100,
    }),
  })
  .readonly();
export type ProjectPriceInput = z.infer<typeof projectPriceInput>;

export function projectPriceFromProject(measurements: Measurements): ProjectPriceInput {
  return {
    materials: 15_000,
    longarm: workOutPrice(longarmPriceInputFromProject(measurements)).quilting.minor,
    hours: 20,
    hourRate: measurements.settings.hourRateMinor,
    overheadPercent: 10,
    markupPercent: 0,
    alike: 1,
    priceStep: 100,
    taxPercent: 0,
    taxIs: 'added',
    taxOn: 'the-whole',
    taxHalves: 'up',
    cashStep: 1,
    depositPercent: 0,
  };
}
