import { z } from 'zod';
import { lengthField } from '#core/domain/fields';
import { calendarDate } from '#core/domain/dates';
import { stagePlanId } from '#core/domain/ids';
import type { Outline } from '#core/domain/outline';
import { type Project, type ProjectDetails, projectPurpose } from '#core/domain/project';
import { settingChanges } from '#core/domain/workshop';
import { type Length, lengthFromInches } from '#core/units/length';

const length = lengthField({ title: 'Length' });
const shape = z.enum(['square', 'rectangle', 'circle', 'ellipse', 'hexagon', 'octagon', 'sides']);

/**
 * A project as it stands in the form: sizes may still be missing, and what was entered for one shape is kept while another is
 * tried. `across` is the side of a square, the diameter of a round, the distance across flats.
 */
export const projectDraft = z.object({
  name: z.string(),
  purpose: projectPurpose,
  forWhom: z.string(),
  dueOn: calendarDate.nullable(),
  shape,
  across: length.nullable(),
  width: length.nullable(),
  length: length.nullable(),
  sides: z.array(length.nullable()),
  hasHole: z.boolean(),
  holeDiameter: length.nullable(),
  hasSlit: z.boolean(),
  settingChanges,
  notes: z.string(),
  stagePlanId: stagePlanId.nullable(),
});
export type ProjectDraft = z.infer<typeof projectDraft>;

export const EMPTY_DRAFT: ProjectDraft = {
  name: '',
  purpose: 'gift',
  forWhom: '',
  dueOn: null,
  shape: 'circle',
  across: null,
  width: null,
  length: null,
  sides: [null, null, null, null],
  hasHole: false,
  holeDiameter: null,
  hasSlit: false,
  settingChanges: {},
  notes: '',
  stagePlanId: null,
};

export function isProjectDraft(stored: unknown): stored is ProjectDraft {
  return projectDraft.safeParse(stored).success;
}

/** The form's view of a project that exists. */
export function draftOfProject({ outline, hole, ...project }: Project): ProjectDraft {
  const { name, purpose, forWhom, dueOn, hasSlit, settingChanges: changes, notes } = project;
  return {
    ...EMPTY_DRAFT,
    ...{ name, purpose, forWhom, dueOn, hasSlit, notes, settingChanges: changes },
    ...sizesOf(outline),
    shape: outline.shape,
    hasHole: hole !== null,
    holeDiameter: hole?.diameter ?? null,
  };
}

/** What the store is given; null while a size is missing. */
export function detailsOfDraft(draft: ProjectDraft): ProjectDetails | null {
  const outline = outlineOfDraft(draft);
  if (outline === null || (draft.hasHole && draft.holeDiameter === null)) return null;
  const { name, purpose, forWhom, dueOn, settingChanges: changes, notes } = draft;
  const hole = draft.hasHole && draft.holeDiameter !== null ? { diameter: draft.holeDiameter } : null;
  return {
    ...{ name: name.trim(), purpose, forWhom: forWhom.trim(), dueOn, outline, hole, notes },
    hasSlit: draft.hasSlit && hole !== null,
    settingChanges: changes,
  };
}

export function outlineOfDraft(draft: ProjectDraft): Outline | null {
  const { across, width, length: long } = draft;
  switch (draft.shape) {
    case 'square':
      return across === null ? null : { shape: 'square', side: across };
    case 'circle':
      return across === null ? null : { shape: 'circle', diameter: across };
    case 'hexagon':
    case 'octagon':
      return across === null ? null : { shape: draft.shape, acrossFlats: across };
    case 'rectangle':
    case 'ellipse':
      return width === null || long === null ? null : { shape: draft.shape, width, length: long };
    case 'sides': {
      const sides = draft.sides.filter((side) => side !== null);
      if (width === null || long === null || sides.length < draft.sides.length) return null;
      return { shape: 'sides', sides, width, length: long };
    }
  }
}

/** A stand-in of middling size, so that a shape can be seen before it has been measured. */
export function previewOutline(draft: ProjectDraft): Outline {
  const or = (value: Length | null, inches: number) => value ?? lengthFromInches(inches);
  const filled = {
    ...draft,
    across: or(draft.across, 48),
    width: or(draft.width, 36),
    length: or(draft.length, 52),
    sides: draft.sides.map((side) => or(side, 30)),
  };
  return outlineOfDraft(filled) ?? { shape: 'circle', diameter: filled.across };
}

/** Why a hole cannot be: null where it fits with some fabric all round. */
export function holeProblem(draft: ProjectDraft): string | null {
  const narrowest = narrowestOf(draft);
  if (!draft.hasHole || draft.holeDiameter === null || narrowest === null) return null;
  return draft.holeDiameter < narrowest
    ? null
    : 'The hole is as wide as the piece. Make it smaller, or the piece larger.';
}

function narrowestOf(draft: ProjectDraft): Length | null {
  const isByWidth = draft.shape === 'rectangle' || draft.shape === 'ellipse' || draft.shape === 'sides';
  if (!isByWidth) return draft.across;
  if (draft.width === null || draft.length === null) return null;
  return draft.width < draft.length ? draft.width : draft.length;
}

function sizesOf(outline: Outline): Pick<ProjectDraft, 'across' | 'width' | 'length' | 'sides'> {
  const none = { across: null, width: null, length: null, sides: EMPTY_DRAFT.sides };
  switch (outline.shape) {
    case 'square':
      return { ...none, across: outline.side };
    case 'circle':
      return { ...none, across: outline.diameter };
    case 'hexagon':
    case 'octagon':
      return { ...none, across: outline.acrossFlats };
    case 'rectangle':
    case 'ellipse':
      return { ...none, width: outline.width, length: outline.length };
    case 'sides':
      return { ...none, width: outline.width, length: outline.length, sides: [...outline.sides] };
  }
}
