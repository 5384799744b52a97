import { z } from 'zod';
import { type CurrencyCode, currencyFromCode } from '#core/units/money';
import { lengthFromInches } from '#core/units/length';
import { benchTimeSchema } from './bench-time';
import { choiceField, countField, lengthField, minorField, percentField } from './fields';
import { labelSheetSchema } from './label-sheet';

const inches = lengthFromInches;

/** The settings of the workshop: each can be changed for the workshop, and again for one project. */
export const settingsSchema = z
  .object({
    unitSystem: choiceField(['inch', 'metric'], { title: 'Units' }),
    inchStep: z.union([z.literal(4), z.literal(8), z.literal(16)]).meta({
      title: 'Smallest fraction shown',
      description: 'Inches are shown, and cut sizes rounded up, to this part of an inch.',
      kind: 'choice',
    }),
    seamAllowance: lengthField({ title: 'Seam allowance', minimum: inches(1 / 16), maximum: inches(2) }),
    seamOff: lengthField({
      title: 'Your seams are off by',
      help: 'The most that the stitching is off the seam line, to either side. Learned from blocks you measured.',
      minimum: inches(0),
      maximum: inches(1 / 4),
    }),
    cutOff: lengthField({
      title: 'Your cuts are off by',
      help: 'The most that one patch is too wide or too narrow. Learned from blocks you measured.',
      minimum: inches(0),
      maximum: inches(1 / 4),
    }),
    fabricWidth: lengthField({
      title: 'Usable fabric width',
      help: 'Between the selvages, after they are cut off.',
      minimum: inches(4),
      maximum: inches(130),
    }),
    bindingStripWidth: lengthField({
      title: 'Outer binding strip',
      help: 'Cut width, before folding.',
      minimum: inches(3 / 4),
      maximum: inches(8),
    }),
    bindingOverlap: lengthField({
      title: 'Outer binding overlap',
      help: 'Extra length for the closing join and for safety.',
      minimum: inches(0),
      maximum: inches(60),
    }),
    innerStripWidth: lengthField({
      title: 'Inner binding strip',
      help: 'Cut width of the bias strip for the hole.',
      minimum: inches(3 / 4),
      maximum: inches(4),
    }),
    quiltThickness: lengthField({
      title: 'Thickness at the edge',
      help: 'Top, batting and backing pressed together.',
      minimum: inches(0),
      maximum: inches(1),
    }),
    backCover: lengthField({
      title: 'Binding past the seam on the back',
      help: 'How far the fold reaches past the stitching on the back.',
      minimum: inches(0),
      maximum: inches(1),
    }),
    backingOverhang: lengthField({
      title: 'Backing and batting overhang',
      help: 'On every side of the top.',
      minimum: inches(0),
      maximum: inches(24),
    }),
    backingSeam: lengthField({ title: 'Backing seam', minimum: inches(1 / 8), maximum: inches(2) }),
    washAcrossPercent: percentField({
      title: 'Shrinks across in the first wash',
      help: '3 to 5% is common practice with cotton batting. 0 if you never wash what you make.',
      minimum: 0,
      maximum: 30,
    }),
    washAlongPercent: percentField({
      title: 'Shrinks along in the first wash',
      help: 'Fabric often shrinks more along the selvage.',
      minimum: 0,
      maximum: 30,
    }),
    safetyExtraPercent: percentField({ title: 'Safety extra on yardage', minimum: 0, maximum: 100 }),
    handStitchPerHour: lengthField({
      title: 'Hand stitching per hour',
      help: 'Length of binding you sew down by hand in an hour.',
      minimum: inches(1),
      maximum: inches(1000),
    }),
    longarmRateMinor: minorField({
      title: 'Longarm rate',
      help: 'Per square inch.',
      unit: 'per square inch',
      minimum: 0,
      maximum: 10_000,
    }),
    longarmMinimumMinor: minorField({ title: 'Longarm minimum', minimum: 0, maximum: 10_000_000 }),
    hourRateMinor: minorField({
      title: 'Your hourly rate',
      help: 'What you charge for an hour of your work.',
      minimum: 0,
      maximum: 10_000_000,
    }),
    turnaroundDays: countField({ title: 'Longarm turnaround', unit: 'days', minimum: 0, maximum: 730 }),
    clockStepMinutes: z
      .union([z.literal(1), z.literal(5), z.literal(10), z.literal(15), z.literal(30)])
      .meta({
        title: 'Round tracked time to the nearest',
        kind: 'choice',
      }),
    silentDays: countField({
      title: 'Remind me to check in after',
      help: 'If there is no news for this long, the project shows up on your bench.',
      unit: 'days',
      minimum: 1,
      maximum: 365,
    }),
  })
  .readonly();

export type Settings = z.infer<typeof settingsSchema>;

/** The settings a project has of its own. */
export const settingChanges = settingsSchema.unwrap().partial().readonly();
export type SettingChanges = z.infer<typeof settingChanges>;

/** The starting settings, in inches: common practice, except the prices, which are samples. */
export const STARTING_SETTINGS: Settings = {
  unitSystem: 'inch',
  inchStep: 8,
  seamAllowance: inches(1 / 4),
  seamOff: inches(1 / 32),
  cutOff: inches(1 / 32),
  fabricWidth: inches(42),
  bindingStripWidth: inches(2.5),
  bindingOverlap: inches(12),
  innerStripWidth: inches(2.25),
  quiltThickness: inches(1 / 8),
  backCover: inches(1 / 8),
  backingOverhang: inches(4),
  backingSeam: inches(1 / 2),
  washAcrossPercent: 4,
  washAlongPercent: 4,
  safetyExtraPercent: 5,
  handStitchPerHour: inches(50),
  longarmRateMinor: 2,
  longarmMinimumMinor: 6_000,
  hourRateMinor: 2_200,
  turnaroundDays: 28,
  clockStepMinutes: 5,
  silentDays: 21,
};

const currencyCodeSchema = z
  .string()
  .regex(/^[A-Z]{3}$/)
  .transform(currencyFromCode) as unknown as z.ZodType<CurrencyCode, string>;

export const themeSchema = z.enum(['system', 'light', 'dark']);
export type Theme = z.infer<typeof themeSchema>;

/** What holds for the whole workshop. All money is in one currency. */
export const workshopSchema = z
  .object({
    name: z.string().trim().max(120),
    currency: currencyCodeSchema,
    theme: themeSchema,
    settings: settingsSchema,
    benchTime: benchTimeSchema,
    labelSheet: labelSheetSchema,
  })
  .readonly();
export type Workshop = z.infer<typeof workshopSchema>;

/** The workshop's settings, replaced by the project's own where it has them. */
export function settingsOfProject(workshopSettings: Settings, changes: SettingChanges): Settings {
  const made = Object.entries(changes).filter(([, value]) => value !== undefined);
  return { ...workshopSettings, ...(Object.fromEntries(made) as Partial<Settings>) };
}
