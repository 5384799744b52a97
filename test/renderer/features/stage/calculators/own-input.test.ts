import { expect, it } from 'vitest';
import { ownPart } from '#renderer/features/stage/calculators/own-input';

const fromProject = { width: 320, shape: { kind: 'rectangle', sides: [1, 2] } };

it('is the fields whose value differs from the project’s', () => {
  expect(ownPart({ ...fromProject, width: 640 }, fromProject)).toEqual({ width: 640 });
  expect(ownPart(fromProject, fromProject)).toEqual({});
});

it('leaves out a group with the same values in another order of fields', () => {
  const reordered = { width: 320, shape: { sides: [1, 2], kind: 'rectangle' } };
  expect(ownPart(reordered, fromProject)).toEqual({});
});
