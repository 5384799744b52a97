import { describe, expect, it } from 'vitest';
import { channels } from '#core/contract/channels';
import { readSheetAddress } from '#renderer/features/sheets/sheet-address';

const ID = '5f0e3f5a-6b6e-4a53-9d0c-0c5d4a8e1a01';
const read = (rest: string, search = '') => readSheetAddress(rest, new URLSearchParams(search));

describe('the address of a sheet', () => {
  it('names a project, its paper, and whether a template is a quarter', () => {
    expect(read(`project/${ID}`, 'paper=letter')).toEqual({
      sheet: 'project',
      projectId: ID,
      paper: 'letter',
    });
    expect(read(`cutting/${ID}`)).toEqual({ sheet: 'cutting', projectId: ID, paper: 'a4' });
    expect(read(`center-template/${ID}`, 'paper=a4&part=quarter')).toEqual({
      sheet: 'center-template',
      projectId: ID,
      paper: 'a4',
      part: 'quarter',
    });
  });

  it('names the shopping list, which is of no project', () => {
    expect(read('shopping', 'paper=letter')).toEqual({ sheet: 'shopping', paper: 'letter' });
    expect(read('shopping/more')).toBeNull();
  });

  it('is a whole template on A4 where it says no more', () => {
    expect(read(`center-template/${ID}`)).toMatchObject({ paper: 'a4', part: 'whole' });
  });

  it('names nothing where the sheet, the project or the rest of it is not one of ours', () => {
    expect(read(`poster/${ID}`)).toBeNull();
    expect(read('project/not-an-id')).toBeNull();
    expect(read(`project/${ID}/more`)).toBeNull();
  });

  it('is one that the main process lets through', () => {
    const asked = { path: `/sheets/center-template/${ID}?paper=a4&part=quarter`, name: 'Sheet' };
    expect(channels['shell:print-sheet'].input.safeParse(asked).success).toBe(true);
  });
});
