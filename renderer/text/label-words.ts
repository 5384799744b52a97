import type { PieceWithCode } from '#core/contract/stash';
import type { LabelProblem } from '#core/stash/lay-labels';
import { formatLength } from '#core/units/format-length';
import { lengthFromUnits } from '#core/units/length';
import type { LengthDisplay } from '#core/units/unit-system';
import { choiceWords } from './choice-words';
import { sizeWords } from './cut-words';

/** What a label says under the name: the size the piece had when it was printed, or what it is where it is told by number. */
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
      return `These labels are ${over} ${way} than the paper. Fewer, smaller or closer ones fit.`;
    }
    case 'starts-beyond':
      return `A sheet has ${String(problem.onASheet)} labels: begin at one of them.`;
  }
}
