import { describe, expect, it } from 'vitest';
import { channels } from '#core/contract/channels';
import { drawSheet } from '#renderer/features/sheets/sheet-page';
import { SHEETS } from '#renderer/features/sheets/sheets';

const ID = '5f0e3f5a-6b6e-4a53-9d0c-0c5d4a8e1a01';
const OTHER = '5f0e3f5a-6b6e-4a53-9d0c-0c5d4a8e1a02';
/** What a sheet is asked to draw; null where there is no such sheet. */
const read = (address: string, search = ''): unknown =>
  drawSheet(address, new URLSearchParams(search))?.props ?? null;

describe('the address of a sheet', () => {
  it('names a project, its paper, and whether a template is a quarter', () => {
    expect(read(`project/${ID}`, 'paper=letter')).toEqual({
      projectId: ID,
      paper: 'letter',
    });
    expect(read(`cutting/${ID}`)).toEqual({ projectId: ID, paper: 'a4' });
    expect(read(`center-template/${ID}`, 'paper=a4&part=quarter')).toEqual({
      projectId: ID,
      paper: 'a4',
      part: 'quarter',
    });
  });

  it('names the shopping list, which belongs to no project', () => {
    expect(read('shopping', 'paper=letter')).toEqual({ paper: 'letter' });
    expect(read('shopping/more')).toBeNull();
  });

  it('asks for a whole template on A4 by default', () => {
    expect(read(`center-template/${ID}`)).toMatchObject({ paper: 'a4', part: 'whole' });
  });

  it('names nothing when the sheet, the project or the rest is unknown', () => {
    expect(read(`poster/${ID}`)).toBeNull();
    expect(read('project/not-an-id')).toBeNull();
    expect(read(`project/${ID}/more`)).toBeNull();
  });

  it('names the pieces to label, the first label to use, and whether labels have outlines', () => {
    const labels = { paper: 'a4', startAt: 1, hasLines: false };
    expect(read(`labels/fabric/${ID}`)).toEqual({ ...labels, of: { of: 'fabric', fabricId: ID } });
    expect(read(`labels/fabric/${ID}`, `piece=${OTHER}&start=7&lines=1`)).toEqual({
      ...labels,
      startAt: 7,
      hasLines: true,
      of: { of: 'fabric', fabricId: ID, pieceId: OTHER },
    });
    expect(read(`labels/place/${ID}`, 'start=none')).toEqual({ ...labels, of: { of: 'place', placeId: ID } });
    const search = new URLSearchParams({ search: 'blau & grün', filter: '{"kind":"leftover"}' });
    expect(read('labels/found', search.toString())).toEqual({
      ...labels,
      of: { of: 'found', search: 'blau & grün', filter: { kind: 'leftover' } },
    });
    for (const none of ['labels', 'labels/fabric', `labels/found/${ID}`, `labels/place/${ID}/more`])
      expect(read(none)).toBeNull();
    const asked = { path: `/sheets/labels/found?${search.toString()}`, name: 'Labels' };
    expect(channels['shell:print-sheet'].input.safeParse(asked).success).toBe(true);
  });

  it('draws each kind of sheet with a component of its own', () => {
    const addresses = [`project/${ID}`, `cutting/${ID}`, 'shopping', 'labels/found', `center-template/${ID}`];
    expect(addresses.map((address) => address.split('/')[0])).toEqual(Object.keys(SHEETS));
    const drawn = addresses.map((address) => drawSheet(address, new URLSearchParams())?.type);
    expect(drawn).not.toContain(undefined);
    expect(new Set(drawn).size).toBe(addresses.length);
  });

  it('is nothing that leads out of the sheets', () => {
    for (const path of ['/sheets/../stash', '/sheets/shopping?a=#/', '/sheets/<b>', '/stash', '//sheets/x'])
      expect(channels['shell:print-sheet'].input.safeParse({ path, name: '' }).success).toBe(false);
  });

  it('is one that the main process lets through', () => {
    const asked = { path: `/sheets/center-template/${ID}?paper=a4&part=quarter`, name: 'Sheet' };
    expect(channels['shell:print-sheet'].input.safeParse(asked).success).toBe(true);
  });
});
