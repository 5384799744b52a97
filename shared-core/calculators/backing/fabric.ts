import type { Need, NeededPatch } from '#core/domain/need';
import type { PatchList } from '#core/domain/patch-list';
import { fabricNeed } from '../needs';
import type { BackingInput } from './input';
import { type BackingDetails, type PanelWay, chosenWays, wholePanels } from './work';

const BACKING = 'Backing';

/** Lengths of the full fabric width; the strips of a joined last panel come from one length. */
export function backingNeeds(input: BackingInput, details: BackingDetails): readonly Need[] {
  const { own, best } = chosenWays(details, input);
  if (best === undefined) return [];
  const panel = { width: best.fabric.width, length: best.panelLength, mayTurn: false };
  const last: NeededPatch = {
    ...panel,
    length: best.fabricLength - (best.panels - 1) * best.panelLength,
    count: 1,
  };
  const patches: readonly NeededPatch[] =
    best.last === 'whole' || best.last === 'outer'
      ? [{ ...panel, count: best.fabricLength / best.panelLength }]
      : [{ ...panel, count: best.panels - 1 }, last];
  const width = { fabricWidth: best.fabric.width, extraPercent: input.safetyExtraPercent };
  return [{ ...fabricNeed(BACKING, patches, width), kind: own === undefined ? 'wide-backing' : 'backing' }];
}

/** Panels of the full fabric width, and the narrower last one or the strips it is joined from. */
export function backingCuts(input: BackingInput, details: BackingDetails): PatchList {
  const { best } = chosenWays(details, input);
  return best === undefined ? [] : panelsOf(best, input.printRuns === 'any-way');
}

function panelsOf(way: PanelWay, mayTurn: boolean): PatchList {
  const panel = { fabric: BACKING, width: way.fabric.width, length: way.panelLength, mayTurn };
  const [width, length] =
    way.last === 'across' ? [way.lastStripLength, way.lastWidth] : [way.lastWidth, way.lastStripLength];
  const isSameSize = width === panel.width && length === panel.length;
  return [
    { ...panel, count: isSameSize ? way.panels : wholePanels(way) },
    { fabric: BACKING, width, length, count: isSameSize ? 0 : way.lastStrips, mayTurn },
  ].filter(({ count }) => count > 0);
}
