import { top, type TopDetails } from '#core/calculators/top/top';
import type { BlockKind, Layout, TopInput } from '#core/calculators/top/input';
import type { UnitSizes } from '#core/calculators/patches/patch-units';
import { formatSentence } from '#core/calculators/format-quantity';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { type Length, lengthFromInches } from '#core/units/length';
import { currencyFromCode } from '#core/units/money';

export const inches = lengthFromInches;

export function topWith(changes: Partial<TopInput>): TopInput {
  const outline = { shape: 'rectangle', width: inches(45), length: inches(60) } as const;
  return {
    ...top.fromProject({ outline, hole: null, hasSlit: false, settings: STARTING_SETTINGS }),
    ...changes,
  };
}

export function answerTo(changes: Partial<TopInput>) {
  const answer = top.calculate(topWith(changes));
  if (!answer.ok) throw new Error(`${answer.error.code}: ${answer.error.says}`);
  return answer.value;
}

export function detailsFor(changes: Partial<TopInput>): TopDetails {
  return answerTo(changes).details;
}

/** The warnings as a maker reads them in inches. */
export function warningsFor(changes: Partial<TopInput>): readonly string[] {
  const style = {
    display: { system: 'inch', inchStep: 16 },
    currency: currencyFromCode('EUR'),
    locale: 'en',
  } as const;
  return answerTo(changes)
    .notes.filter(({ kind }) => kind === 'warning')
    .map((note) => formatSentence(note, style));
}

const square = (side: number): UnitSizes => ({ unit: 'square', side: inches(side) });

/** A block cut in one piece. */
export function plainBlock(name: string, side: number, fabric = 'Light'): BlockKind {
  return {
    name,
    width: inches(side),
    length: inches(side),
    units: [{ unit: square(side), times: 1, fabrics: [fabric] }],
  };
}

export function ninePatch(name: string, patch: number): BlockKind {
  return {
    name,
    width: inches(3 * patch),
    length: inches(3 * patch),
    units: [
      { unit: square(patch), times: 5, fabrics: ['Dark'] },
      { unit: square(patch), times: 4, fabrics: ['Light'] },
    ],
  };
}

export function rowsOf(
  rows: readonly (readonly [block: string, times: number, rows: number])[],
  more: Partial<Extract<Layout, { layout: 'rows' }>> = {},
): Layout {
  return {
    layout: 'rows',
    rows: rows.map(([block, times, down]) => ({ blocks: [{ block, times }], times: down })),
    sashing: null,
    rounds: [],
    ...more,
  };
}

export function border(width: Length, corners: 'butted' | 'mitered' | 'cornerstones', fabric = 'Dark') {
  return { round: 'border', width, fabric, corners, cornerFabric: '' } as const;
}
