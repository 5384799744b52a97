import { assertNever } from '#core/assert-never';
import { type CutLine, cutList } from '#core/cutting/cut-list';
import type { CutStep } from '#core/cutting/cut-steps';
import { formatLength } from '#core/units/format-length';
import type { LengthDisplay } from '#core/units/unit-system';
import { patchLabel } from './job-of-setup';
import { asLength, sizeWords } from './plan-words';

/** One line of the list at the cutting table, with how far it is set in. */
export interface WordedCut {
  readonly depth: number;
  readonly words: string;
}

/** A step in words: first the strip, then what it is cut into, then what is trimmed. */
export function stepWords({ parts }: CutStep, display: LengthDisplay): readonly WordedCut[] {
  return cutList(parts).map((line) => ({ depth: line.depth, words: lineWords(line, display) }));
}

/** `12 A, 4 B` */
export function givesWords({ patches }: CutStep): string {
  return patches.map(({ patch, copies }) => `${String(copies)} ${patchLabel(patch)}`).join(', ');
}

function lineWords(line: CutLine, display: LengthDisplay): string {
  return line.depth === 0 ? firstCutWords(line, display) : innerCutWords(line, display);
}

/** What comes off the cloth itself. */
function firstCutWords({ size, times, gives }: CutLine, display: LengthDisplay): string {
  const wide = formatLength(asLength(size), display);
  const often = times === 1 ? '' : `, ${String(times)} times`;
  switch (gives.kind) {
    case 'part':
      return `Cut a strip of ${wide}${often}.`;
    case 'patch':
      return `Cut ${wide}${often}: ${patchLabel(gives.patch)}.`;
    case 'rest':
      if (gives.use === 'margin') return `Cut ${wide} off, so that the end is straight.`;
      return gives.use === 'scrap'
        ? `Cut ${wide} off; it is not kept.`
        : `Cut ${wide} off and keep it, ${sizeWords(restSize(gives), display)}.`;
    default:
      return assertNever(gives);
  }
}

/** What a strip, or a length of one, is cut into. */
function innerCutWords({ depth, size, times, alike, gives }: CutLine, display: LengthDisplay): string {
  const wide = formatLength(asLength(size), display);
  const it = alike === 1 ? 'it' : 'each';
  switch (gives.kind) {
    case 'part':
      return times === 1
        ? `Cut a length of ${wide} off ${it}.`
        : `Cut ${String(times)} lengths of ${wide} off ${it}.`;
    case 'patch': {
      const label = patchLabel(gives.patch);
      if (times === 1)
        return depth > 1 ? `Trim ${it} to ${wide}: ${label}.` : `Cut ${wide} off ${it}: ${label}.`;
      return `Cut ${it} into ${String(times)} of ${wide}: ${label}.`;
    }
    case 'rest': {
      const all = times === 1 ? wide : `${String(times)} times ${wide}`;
      if (gives.use === 'margin') return `Trim ${all} off ${it}.`;
      return gives.use === 'scrap'
        ? `${all} is over and not kept.`
        : `Keep what is over, ${sizeWords(restSize(gives), display)}.`;
    }
    default:
      return assertNever(gives);
  }
}

function restSize({ width, height }: { readonly width: number; readonly height: number }) {
  return { width, length: height };
}
