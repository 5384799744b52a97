import { describe, expect, it } from 'vitest';
import { MENU } from '#core/contract/menu';
import { PLACES, SCREENS } from '#core/contract/screens';
import { loadPage } from '#renderer/app/routes';

describe('the list of screens', () => {
  it.each(SCREENS.map(({ page }) => page))('names a page that is there: %s', async (page) => {
    expect(await loadPage(page)).toBeTypeOf('function');
  });

  it('has no address twice', () => {
    expect(new Set(SCREENS.map(({ path }) => path)).size).toBe(SCREENS.length);
  });

  it('refuses a page that is not there', async () => {
    await expect(loadPage('bench/no-such-page')).rejects.toThrow('There is no page bench/no-such-page');
  });

  it('gives each place beside the page a menu entry with a key of its own', () => {
    const entries = Object.values(MENU).flat();
    expect(entries.flatMap(({ item }) => ('open' in item ? [item.open] : []))).toEqual(
      expect.arrayContaining(PLACES.map(({ path }) => path)),
    );
    expect(new Set(entries.map(({ key }) => key)).size).toBe(entries.length);
    expect(PLACES.map(({ words }) => words)).toEqual([
      'Bench',
      'Projects',
      'Days',
      'At the quilter',
      'Stash',
      'Shopping',
      'Workshop',
    ]);
  });
});
