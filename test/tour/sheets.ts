import path from 'node:path';
import { cuttingSheet } from './cutting-stops';
import { askStore } from '#test/helpers/ask-store';
import type { DevelopedProgram } from '#test/helpers/launch';

/** Makes every sheet of one ring-shaped project as a PDF. The system's own save dialog is replaced by its answer. */
export async function makeSheets({ electron, page }: DevelopedProgram, folder: string): Promise<void> {
  const { items } = await askStore(page, 'project:list', { archived: false });
  const ring = items.find(({ project }) => project.hole !== null)?.project;
  if (ring === undefined) throw new Error('The demo has no ring');
  const { items: found } = await askStore(page, 'fabric:list', { search: 'blue', limit: 10 });
  const blue = found.find(({ pieces }) => pieces.length > 0)?.fabric.id;
  if (blue === undefined) throw new Error('The demo has no blue');
  const sheets = [
    ['project-letter', `/sheets/project/${ring.id}?paper=letter`],
    ['project-a4', `/sheets/project/${ring.id}?paper=a4`],
    ['center-template-letter', `/sheets/center-template/${ring.id}?paper=letter`],
    ['cutting-plan-letter', await cuttingSheet(page)],
    ['labels-a4', '/sheets/labels/found?search=&paper=a4&lines=1'],
    ['labels-fabric-letter', `/sheets/labels/fabric/${blue}?paper=letter&start=5`],
    ['shopping-letter', '/sheets/shopping?paper=letter'],
    ['center-template-quarter-a4', `/sheets/center-template/${ring.id}?paper=a4&part=quarter`],
  ] as const;
  for (const [name, sheet] of sheets) {
    const file = path.join(folder, `${name}.pdf`);
    await electron.evaluate(({ dialog }, filePath) => {
      dialog.showSaveDialog = () => Promise.resolve({ canceled: false, filePath });
    }, file);
    await askStore(page, 'shell:print-sheet', { path: sheet, name: 'Sheet' });
    console.log(`  ${name}.pdf`);
  }
}
