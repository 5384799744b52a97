import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';

/** What axe finds against WCAG 2.2 AA and its own good practice, as one line a fault. */
export async function axeFaults(page: Page): Promise<readonly string[]> {
  // What is still fading in has the contrast of neither its beginning nor its end.
  await page.evaluate(() => Promise.all(document.getAnimations().map((animation) => animation.finished)));
  const tags = ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa', 'best-practice'];
  const { violations } = await new AxeBuilder({ page }).setLegacyMode(true).withTags(tags).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(' ')).join(', ')}`);
}
