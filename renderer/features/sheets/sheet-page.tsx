import { assertNever } from '#core/assert-never';
import { useParams, useSearchParams } from 'react-router';
import { CuttingSheet } from './cutting-sheet';
import { LabelsSheet } from './labels-sheet';
import { ProjectSheet } from './project-sheet';
import { readSheetAddress } from './sheet-address';
import { ShoppingSheet } from './shopping-sheet';
import { SheetWords } from './sheet-words';
import { TemplateSheet } from './template-sheet';

/** A sheet for paper, named by the rest of the address: a project’s own, or one of the stash. */
export function SheetPage() {
  const [search] = useSearchParams();
  const request = readSheetAddress(useParams()['*'] ?? '', search);
  if (request === null) return <SheetWords paper="a4">There is no such sheet.</SheetWords>;
  switch (request.sheet) {
    case 'project':
      return <ProjectSheet {...request} />;
    case 'cutting':
      return <CuttingSheet {...request} />;
    case 'shopping':
      return <ShoppingSheet paper={request.paper} />;
    case 'labels':
      return <LabelsSheet {...request} />;
    case 'center-template':
      return <TemplateSheet {...request} />;
    default:
      return assertNever(request);
  }
}
