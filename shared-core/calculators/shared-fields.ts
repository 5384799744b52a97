import { lengthField, percentField } from '#core/domain/fields';
import type { Settings } from '#core/domain/workshop';
import { yardageStep } from '#core/units/format-length';
import { type Length, lengthFromInches, lengthFromMillimeters } from '#core/units/length';
import { displayStep, type LengthDisplay } from '#core/units/unit-system';

/** Input fields that many calculators share, and their values from the settings. */

export function cutStepField() {
  return lengthField({
    title: 'Round cut sizes up to',
    help: 'Cut sizes are rounded up to a whole multiple of this. The exact size is shown beside them.',
    isSeldom: true,
    minimum: lengthFromMillimeters(0.1),
    maximum: lengthFromInches(1),
  });
}

export function yardageStepField() {
  return lengthField({
    title: 'Shops cut fabric in steps of',
    help: 'Lengths to buy are rounded up to a whole multiple of this: an eighth of a yard, or 5 cm.',
    isSeldom: true,
    minimum: lengthFromMillimeters(1),
    maximum: lengthFromMillimeters(1_000),
  });
}

export function seamField(help = 'On each piece of fabric, from the cut edge to the stitching.') {
  return lengthField({
    title: 'Seam allowance',
    help,
    minimum: lengthFromInches(1 / 16),
    maximum: lengthFromInches(2),
  });
}

export function safetyExtraField() {
  return percentField({ title: 'Safety extra on fabric', isSeldom: true, minimum: 0, maximum: 100 });
}

export function fabricWidthField() {
  return lengthField({
    title: 'Usable fabric width',
    help: 'Without the selvages.',
    minimum: lengthFromInches(4),
    maximum: lengthFromInches(130),
  });
}

/** How to write lengths with these settings. */
export function displayOfSettings(settings: Pick<Settings, 'unitSystem' | 'inchStep'>): LengthDisplay {
  return { system: settings.unitSystem, inchStep: settings.inchStep };
}

/** What cut sizes are rounded up to: the inch fraction of the settings, or 1 mm. */
export function cutStepOfSettings(settings: Pick<Settings, 'unitSystem' | 'inchStep'>): Length {
  return displayStep(displayOfSettings(settings));
}

/** What shops cut fabric by: an eighth of a yard, or 5 cm. */
export function yardageStepOfSettings(settings: Pick<Settings, 'unitSystem' | 'inchStep'>): Length {
  return yardageStep(displayOfSettings(settings));
}
