import { expect, type Page } from '@playwright/test';

/** The heading of the open page. A new page moves the focus to it. */
export const title = (page: Page, name: string | RegExp) => page.getByRole('heading', { level: 1, name });

/** The page's main action, which is in the same place on every page. */
export const mainAction = (page: Page, name: string) =>
  page.getByRole('contentinfo').getByRole('button', { name, exact: true });

/** A stage's row on the page of its project. */
export const stageRow = (page: Page, name: string) =>
  page
    .getByRole('region', { name: 'What is next' })
    .getByRole('listitem')
    .filter({ has: page.getByRole('link', { name, exact: true }) });

/** Goes to one of the places by the links beside every page. */
export async function goTo(
  page: Page,
  place: 'Bench' | 'Projects' | 'Days' | 'At the quilter' | 'Stash' | 'Shopping' | 'Workshop',
): Promise<void> {
  await page.getByRole('navigation').getByRole('link', { name: place, exact: true }).click();
  await expect(title(page, place === 'At the quilter' ? 'Sent out' : place)).toBeVisible();
}

export async function openProject(page: Page, name: string): Promise<void> {
  await goTo(page, 'Projects');
  await page.getByRole('link', { name }).click();
  await expect(title(page, name)).toBeVisible();
}

export async function openStage(page: Page, project: string, stage: string): Promise<void> {
  await openProject(page, project);
  await stageRow(page, stage).getByRole('link').click();
  await expect(title(page, stage)).toBeVisible();
}

/** The local date some days from now, in the form of a date field. */
export function dayFromNow(days: number): string {
  const day = new Date();
  day.setDate(day.getDate() + days);
  const digits = (value: number) => String(value).padStart(2, '0');
  return `${String(day.getFullYear())}-${digits(day.getMonth() + 1)}-${digits(day.getDate())}`;
}

/** Enters a round project with a hole and a slit, and saves it with the keyboard. */
export async function enterRing(page: Page, name: string): Promise<void> {
  await goTo(page, 'Projects');
  await page.getByRole('link', { name: 'New project' }).click();
  await expect(title(page, 'New project')).toBeFocused();
  await page.getByRole('textbox', { name: 'Name' }).fill(name);
  await page.getByRole('textbox', { name: 'Across' }).fill('48 1/2');
  await page.getByRole('checkbox', { name: 'It has a hole in the middle' }).check();
  await page.getByRole('textbox', { name: 'Hole across' }).fill('6 3/4');
  await page.getByRole('checkbox', { name: /A slit runs/ }).check();
  await page.keyboard.press('Control+Enter');
  await expect(title(page, name)).toBeFocused();
}
