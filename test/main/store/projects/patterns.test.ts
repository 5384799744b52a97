import fs from 'node:fs';
import { expect, test } from 'vitest';
import { NO_PATTERN } from '#core/domain/pattern';
import { findPatternFile } from '#main/store/projects/patterns';
import { addProject, inches, openWorkshop, TINY_PNG } from '#test/helpers/workshop';

const PDF = Uint8Array.from(Buffer.from('%PDF-1.7\nnothing to see'));
const PATCH = { fabric: 'Pebble Dot', cutAs: 'patch', width: inches(2.5), length: inches(2.5), count: 48 };

test('a pattern is saved with the patches of its list in one change, and undone with them', () => {
  const workshop = openWorkshop();
  const { projectId, stages } = addProject(workshop);
  const piecing = stages.find(({ kind }) => kind === 'piecing')!;
  const details = {
    ...NO_PATTERN,
    patternName: 'Lantern Street',
    page: '12',
    place: 'Blue folder',
    listText: 'Pebble Dot: 48 squares 2 1/2"',
    fabrics: [{ role: 'Pebble Dot', fabric: '' }],
  };
  const answer = { stageId: piecing.id, calculator: 'pattern-list', ownInput: { patches: [PATCH] } };
  workshop.get('pattern:save', { projectId, details, answer });
  expect(workshop.get('pattern:open', { projectId })).toEqual({ ...details, file: null });
  const needed = () =>
    workshop.get('shopping:list', {}).lines.flatMap(({ shares }) => shares.map(({ need }) => need.name));
  expect(needed()).toContain('Pebble Dot');
  workshop.get('change:undo', {});
  expect(workshop.get('pattern:open', { projectId })).toBeNull();
  expect(needed()).not.toContain('Pebble Dot');
  workshop.get('change:redo', {});
  expect(workshop.get('pattern:open', { projectId })).toEqual({ ...details, file: null });
  expect(needed()).toContain('Pebble Dot');
});

test('a list without patches any more asks for no fabric', () => {
  const workshop = openWorkshop();
  const { projectId, stages } = addProject(workshop);
  const stageId = stages.find(({ kind }) => kind === 'piecing')!.id;
  const save = (ownInput: object | null) =>
    workshop.get('pattern:save', {
      projectId,
      details: NO_PATTERN,
      answer: { stageId, calculator: 'pattern-list', ownInput },
    });
  const answers = () => workshop.get('calculation:list', { stageId }).length;
  save({ patches: [PATCH] });
  expect(answers()).toBe(1);
  save(null);
  expect(answers()).toBe(0);
  workshop.get('change:undo', {});
  expect(answers()).toBe(1);
});

test('a pattern saved again takes the place of the one before, and goes with its project', () => {
  const workshop = openWorkshop();
  const { projectId } = addProject(workshop);
  const save = (patternName: string) =>
    workshop.get('pattern:save', { projectId, details: { ...NO_PATTERN, patternName }, answer: null });
  save('One');
  save('Two');
  expect(workshop.get('pattern:open', { projectId })?.patternName).toBe('Two');
  workshop.get('project:delete', { projectId });
  expect(workshop.fail('pattern:open', { projectId })).toEqual({ code: 'not-found', kind: 'project' });
  workshop.get('change:undo', {});
  expect(workshop.get('pattern:open', { projectId })?.patternName).toBe('Two');
});

test('an answer of another project’s stage is refused, and nothing is saved', () => {
  const workshop = openWorkshop();
  const { projectId } = addProject(workshop);
  const other = addProject(workshop);
  const stageId = other.stages.find(({ kind }) => kind === 'piecing')!.id;
  const answer = { stageId, calculator: 'pattern-list', ownInput: { patches: [PATCH] } };
  expect(workshop.fail('pattern:save', { projectId, details: NO_PATTERN, answer })).toEqual({
    code: 'not-found',
    kind: 'stage',
  });
  expect(workshop.get('pattern:open', { projectId })).toBeNull();
});

test.each([
  ['a PDF', PDF, 'lantern.pdf'],
  ['a picture', TINY_PNG, 'lantern.png'],
])('%s is kept beside the workshop file, and found again', (_what, bytes, name) => {
  const workshop = openWorkshop();
  const { projectId } = addProject(workshop);
  const { store, folders } = workshop.context;
  workshop.get('pattern:set-file', { projectId, file: { name, bytes } });
  expect(workshop.get('pattern:open', { projectId })?.file).toMatchObject({ name });
  const found = findPatternFile(store, folders.photos, projectId);
  expect(found.ok && Uint8Array.from(fs.readFileSync(found.value.file))).toEqual(bytes);
  workshop.get('pattern:set-file', { projectId, file: null });
  expect(workshop.get('pattern:open', { projectId })?.file).toBeNull();
  expect(findPatternFile(store, folders.photos, projectId).ok).toBe(false);
  workshop.get('change:undo', {});
  expect(findPatternFile(store, folders.photos, projectId)).toEqual(found);
});

test('a file of another kind is refused, and nothing is written', () => {
  const workshop = openWorkshop();
  const { projectId } = addProject(workshop);
  const bytes = Uint8Array.from(Buffer.from('MZ no pattern'));
  expect(workshop.fail('pattern:set-file', { projectId, file: { name: 'x.pdf', bytes } })).toEqual({
    code: 'not-a-pattern-file',
  });
  expect(fs.existsSync(workshop.context.folders.photos)).toBe(false);
});
