import type { ProjectDetails } from '#core/domain/project';
import type { FabricDetails } from '#core/domain/stash';
import type { CalendarDate } from '#core/units/calendar-date';
import { lengthFromInches } from '#core/units/length';

export const inches = lengthFromInches;

export function projectDetails(name: string, dueOn: CalendarDate): ProjectDetails {
  return {
    name,
    purpose: 'own',
    forWhom: 'Somebody invented',
    dueOn,
    outline: { shape: 'circle', diameter: inches(50) },
    hole: { diameter: inches(6) },
    hasSlit: true,
    settingChanges: {},
    notes: 'A few lines about how it is to look, and what was agreed. '.repeat(5),
  };
}

export function fabricDetails(name: string, changes: Partial<FabricDetails>): FabricDetails {
  return {
    name,
    print: '',
    colorWords: '',
    fiber: 'cotton',
    direction: 'any',
    width: inches(42),
    isWashed: true,
    supplier: 'Invented shop',
    place: `Shelf ${name.length % 9}`,
    swatch: '#a0522d',
    notes: 'Bought for no piece in particular.',
    ...changes,
  };
}
