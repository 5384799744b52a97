import type { PieceWithCode } from '#core/contract/stash';
import type { LabelProblem } from '#core/stash/lay-labels';
import { formatLength } from '#core/units/format-length';
import { lengthFromUnits } from '#core/units/length';
import type { LengthDisplay } from '#core/units/unit-system';
import { choiceWords } from './choice-words';
import { sizeWords } from './size-words';

/** The line of a label under the name: the size of the piece at printing, or its kind if it is counted in items. */
export function labelSize({ piece }: PieceWithCode, display: LengthDisplay): string {
  return piece.unitLength === null
    ? sizeWords({ width: piece.width, length: piece.there }, display)
    : choiceWords(piece.kind);
}

export function labelPlace({ piece, fabric }: PieceWithCode): string {
  return piece.place === '' ? fabric.place : piece.place;
}

export function labelProblemWords(problem: LabelProblem, display: LengthDisplay): string {
  switch (problem.code) {
    case 'too-wide':
    case 'too-tall': {
      const over = formatLength(lengthFromUnits(problem.over), display, 'up');
      const way = problem.code === 'too-wide' ? 'wider' : 'longer';
      return `These labels are ${over} ${way} than the paper. Use fewer, smaller or closer ones.`;
    }
    case 'starts-beyond':
      return `A sheet has ${String(problem.onASheet)} labels. Start at one of them.`;
  }
}
