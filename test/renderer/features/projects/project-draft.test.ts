import { describe, expect, it } from 'vitest';
import type { Outline } from '#core/domain/outline';
import { projectDetailsSchema } from '#core/domain/project';
import { lengthFromInches } from '#core/units/length';
import {
  cornerProblem,
  detailsOfDraft,
  draftOfProject,
  EMPTY_DRAFT,
  holeProblem,
  sidesProblem,
  isProjectDraft,
} from '#renderer/features/projects/project-draft';
import { matchesSearch } from '#renderer/features/projects/project-search';
import { glance } from '#test/helpers/glances';

const outlines: readonly Outline[] = [
  { shape: 'square', side: lengthFromInches(40) },
  { shape: 'rectangle', width: lengthFromInches(14), length: lengthFromInches(42) },
  {
    shape: 'rounded',
    width: lengthFromInches(48),
    length: lengthFromInches(60),
    cornerRadius: lengthFromInches(5),
  },
  { shape: 'circle', diameter: lengthFromInches(60) },
  { shape: 'ellipse', width: lengthFromInches(20), length: lengthFromInches(30) },
  { shape: 'hexagon', acrossFlats: lengthFromInches(54) },
  { shape: 'octagon', acrossFlats: lengthFromInches(48) },
  {
    shape: 'sides',
    sides: [30, 31, 32].map(lengthFromInches),
    width: lengthFromInches(30),
    length: lengthFromInches(28),
  },
];

const { project } = glance({ stages: ['planned'] });

describe('the form of a project', () => {
  it.each(outlines)('opens a $shape and saves it unchanged', (outline) => {
    const hole = { diameter: lengthFromInches(6) };
    const before = { ...project, outline, hole, hasSlit: true, settingChanges: { inchStep: 16 as const } };
    const after = detailsOfDraft(draftOfProject(before));
    expect(after).toEqual(projectDetailsSchema.parse(before));
  });

  it('has no details to save while a size is missing', () => {
    expect(detailsOfDraft(EMPTY_DRAFT)).toBeNull();
    const round = { ...EMPTY_DRAFT, name: 'Round', across: lengthFromInches(40) };
    expect(detailsOfDraft(round)).toMatchObject({ outline: { shape: 'circle' }, hole: null });
    expect(detailsOfDraft({ ...round, hasHole: true })).toBeNull();
  });

  it('has no rounded corners that run into each other', () => {
    const draft = {
      ...EMPTY_DRAFT,
      shape: 'rounded' as const,
      width: lengthFromInches(20),
      length: lengthFromInches(30),
      cornerRadius: lengthFromInches(10),
    };
    expect(cornerProblem(draft)).toBeNull();
    expect(detailsOfDraft(draft)).toMatchObject({ outline: { shape: 'rounded' } });
    const larger = { ...draft, cornerRadius: lengthFromInches(10.5) };
    expect(cornerProblem(larger)).toBe(
      'The corners run into each other. Make the radius at most half of the shorter side.',
    );
    expect(detailsOfDraft(larger)).toBeNull();
  });

  it.each([
    ['one side is longer than the rest', [1, 1, 100], 36, 3, /can’t meet/],
    ['one side is longer than the piece', [60, 40, 40, 40], 36, 40, /longer than the project/],
    ['the sides cannot go around', [10, 10, 10], 90, 90, /too short to go around/],
  ] as const)('says so and saves nothing if %s', (_what, sides, width, length, says) => {
    const draft = {
      ...EMPTY_DRAFT,
      shape: 'sides' as const,
      sides: sides.map(lengthFromInches),
      width: lengthFromInches(width),
      length: lengthFromInches(length),
    };
    expect(sidesProblem(draft)).toMatch(says);
    expect(detailsOfDraft(draft)).toBeNull();
    const mended = {
      ...draft,
      sides: [30, 31, 32].map(lengthFromInches),
      width: lengthFromInches(30),
      length: lengthFromInches(28),
    };
    expect(sidesProblem(mended)).toBeNull();
    expect(detailsOfDraft(mended)).not.toBeNull();
  });

  it('remembers each size while another shape is tried', () => {
    const round = { ...EMPTY_DRAFT, name: 'Round', across: lengthFromInches(40) };
    const back = { ...round, shape: 'rectangle' as const };
    expect(detailsOfDraft({ ...back, shape: 'square' })).toMatchObject({
      outline: { side: lengthFromInches(40) },
    });
  });

  it('saves no slit without a hole', () => {
    const draft = {
      ...EMPTY_DRAFT,
      across: lengthFromInches(40),
      hasSlit: true,
      holeDiameter: lengthFromInches(6),
    };
    expect(detailsOfDraft(draft)).toMatchObject({ hole: null, hasSlit: false });
  });

  it('rejects a hole as wide as the project', () => {
    const draft = {
      ...EMPTY_DRAFT,
      across: lengthFromInches(40),
      hasHole: true,
      holeDiameter: lengthFromInches(40),
    };
    expect(holeProblem(draft)).toMatch(/as wide as the project/);
    expect(holeProblem({ ...draft, holeDiameter: lengthFromInches(39) })).toBeNull();
  });

  it('reads a stored draft back, and refuses anything else', () => {
    expect(isProjectDraft(JSON.parse(JSON.stringify(EMPTY_DRAFT)))).toBe(true);
    expect(isProjectDraft({ name: 'Half a draft' })).toBe(false);
  });
});

describe('finding a project', () => {
  const found = glance({ name: 'Harvest hearth round', stages: ['planned'] });
  it.each(['harv', 'HEARTH har', 'stage', ''])('finds it by “%s”', (search) => {
    expect(matchesSearch(found, search)).toBe(true);
  });
  it.each(['arvest', 'harvest snow'])('does not find it by “%s”', (search) => {
    expect(matchesSearch(found, search)).toBe(false);
  });
});
