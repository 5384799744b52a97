import type { CutTree } from '#core/domain/cutting-plan';

interface AlikeRun {
  readonly part: CutTree;
  readonly times: number;
}

/** Runs of equal parts that follow one another, each with its number of parts, which is at most `most`. */
export function alikeRuns(parts: readonly CutTree[], most = Infinity): readonly AlikeRun[] {
  const runs: AlikeRun[] = [];
  let lastKey = '';
  for (const part of parts) {
    const key = JSON.stringify(part);
    const last = runs.at(-1);
    if (last !== undefined && key === lastKey && last.times < most) {
      runs[runs.length - 1] = { part, times: last.times + 1 };
    } else runs.push({ part, times: 1 });
    lastKey = key;
  }
  return runs;
}
