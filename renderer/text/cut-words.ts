import { assertNever } from '#core/assert-never';
import { type CutLine, cutList } from '#core/cutting/tree/cut-list';
import type { CutStep } from '#core/cutting/tree/cut-steps';
import { formatLength } from '#core/units/format-length';
import type { LengthDisplay } from '#core/units/unit-system';
import type { PiecePlan } from '#core/cutting/tree/cutting-job';
import { type Length, lengthFromUnits } from '#core/units/length';
import { sizeWords } from './size-words';

/** One line of the cutting steps, with how far it is indented. */
export interface WordedCut {
  readonly depth: number;
  readonly words: string;
}

/** A step in words: the strip, what it is cut into, and what is trimmed. */
export function stepWords({ parts, isStack }: CutStep, display: LengthDisplay): readonly WordedCut[] {
  return cutList(parts).map((line) => ({ depth: line.depth, words: lineWords(line, isStack, display) }));
}

/** `12 A, 4 B` */
export function givesWords({ patches }: CutStep): string {
  return patches.map(({ patch, copies }) => `${String(copies)} ${patchLabel(patch)}`).join(', ');
}

function lineWords(line: CutLine, isStack: boolean, display: LengthDisplay): string {
  if (line.depth > 0) return innerCutWords(line, display);
  return isStack ? stackWords(line) : firstCutWords(line, display);
}

/** What is taken from a pack. A sheet that is the size of a patch is not cut. */
function stackWords({ times, result }: CutLine): string {
  const taken = times === 1 ? 'Take one from the pack' : `Take ${String(times)} from the pack`;
  if (result.kind === 'patch') return `${taken}: ${patchLabel(result.patch)} as it is.`;
  return times === 1 ? `${taken}.` : `${taken} and stack them.`;
}

/** What comes off the fabric itself. */
function firstCutWords({ size, times, result }: CutLine, display: LengthDisplay): string {
  const wide = formatLength(asLength(size), display);
  const often = times === 1 ? '' : `, ${String(times)} times`;
  switch (result.kind) {
    case 'part':
      return `Cut a strip of ${wide}${often}.`;
    case 'patch':
      return `Cut ${wide}${often}: ${patchLabel(result.patch)}.`;
    case 'rest':
      if (result.use === 'margin') return `Cut ${wide} off to straighten the end.`;
      return result.use === 'scrap'
        ? `Cut ${wide} off and throw it out.`
        : `Cut ${wide} off and keep it, ${sizeWords(restSize(result), display)}.`;
    default:
      return assertNever(result);
  }
}

/** What a strip, or a length of one, is cut into. */
function innerCutWords({ depth, size, times, alike, result }: CutLine, display: LengthDisplay): string {
  const wide = formatLength(asLength(size), display);
  const it = alike === 1 ? 'it' : 'each';
  switch (result.kind) {
    case 'part':
      return times === 1
        ? `Cut a length of ${wide} off ${it}.`
        : `Cut ${String(times)} lengths of ${wide} off ${it}.`;
    case 'patch': {
      const label = patchLabel(result.patch);
      if (times === 1)
        return depth > 1 ? `Trim ${it} to ${wide}: ${label}.` : `Cut ${wide} off ${it}: ${label}.`;
      return `Cut ${it} into ${String(times)} of ${wide}: ${label}.`;
    }
    case 'rest': {
      const all = times === 1 ? wide : `${String(times)} × ${wide}`;
      if (result.use === 'margin') return `Trim ${all} off ${it}.`;
      return result.use === 'scrap'
        ? `Throw out the ${all} left over.`
        : `Keep what is left${alike === 1 ? '' : ' of each'}, ${sizeWords(restSize(result), display)}.`;
    }
    default:
      return assertNever(result);
  }
}

function restSize({ width, height }: { readonly width: number; readonly height: number }) {
  return { width, length: height };
}

/** `12 patches, 9 cuts in 2 rounds, folded once; the longest cut takes 2 lengths of the ruler` */
export function cutsWords(piece: PiecePlan): string {
  const moves = Math.max(1, ...piece.cuts.map(({ passes }) => passes));
  const folded = piece.cuts.some(({ layers }) => layers === 2) ? ', folded once' : '';
  const moved = moves > 1 ? `; the longest cut takes ${String(moves)} lengths of the ruler` : '';
  return `${counted(piece.placed.length, 'patch', 'patches')}, ${counted(piece.foldedCuts, 'cut')} in ${counted(piece.stages, 'round')}${folded}${moved}`;
}

/** The size of a piece. For a pack, how many sheets are taken and the size of one: `12 of 42 × 2½ in`. */
export function pieceSizeWords({ tree, width, length }: PiecePlan, display: LengthDisplay): string {
  if (tree.kind !== 'sheets') return sizeWords({ width, length }, display);
  const count = tree.parts.length;
  return `${String(count)} of ${sizeWords({ width, length: length / count }, display)}`;
}

/** The letter of a patch on drawings and lists: A to Z, then AA. */
export function patchLabel(index: number): string {
  const letter = String.fromCharCode(65 + (index % 26));
  return index < 26 ? letter : `${patchLabel(Math.floor(index / 26) - 1)}${letter}`;
}

export function counted(count: number, one: string, several = `${one}s`): string {
  return `${String(count)} ${count === 1 ? one : several}`;
}

export function asLength(units: number): Length {
  return lengthFromUnits(Math.round(units));
}
