import { centerTemplateSheet } from './center-template/center-template-sheet';
import { cuttingSheet } from './cutting/cutting-sheet';
import { labelsSheet } from './labels/labels-sheet';
import { projectSheet } from './project/project-sheet';
import type { Sheet } from './sheet';
import { shoppingSheet } from './shopping/shopping-sheet';

/** Every kind of sheet, by its name in the address. */
export const SHEETS: Readonly<Record<string, Sheet>> = {
  project: projectSheet,
  cutting: cuttingSheet,
  shopping: shoppingSheet,
  labels: labelsSheet,
  'center-template': centerTemplateSheet,
};
