import type { PlacedPatch } from '#core/cutting/tree/cut-plan';

/** Percent by which a height is above its reference, to two places; null without a reference. */
export function gapPercent(height: number, reference: number | undefined): number | null {
  if (reference === undefined || reference === 0) return null;
  return Math.round((height / reference - 1) * 10_000) / 100;
}

export interface GapSummary {
  readonly scored: number;
  readonly meanGap: number | null;
  readonly worstGap: number | null;
}

/** Mean and worst of the gaps that have a reference. */
export function summarizeGaps(gaps: readonly (number | null)[]): GapSummary {
  const scored = gaps.filter((gap) => gap !== null);
  if (scored.length === 0) return { scored: 0, meanGap: null, worstGap: null };
  const mean = scored.reduce((sum, gap) => sum + gap, 0) / scored.length;
  return { scored: scored.length, meanGap: Math.round(mean * 100) / 100, worstGap: Math.max(...scored) };
}

/** The fields of a layout file. */
export function layoutPlaces(places: readonly PlacedPatch[]): object[] {
  return places.map(({ x, y, width, height, patch }) => ({ x, y, w: width, h: height, item: patch }));
}
