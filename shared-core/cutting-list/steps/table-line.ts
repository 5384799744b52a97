import type { ListItem } from '../parts/read-item';
import { readSides } from '../parts/read-size';
import { readWhole, type Tokens } from '../parts/token';
import { type Column, mark, type OpenLine, type OpenList, startPart, takeRole } from '../list/open-list';
import { COLUMNS, NUMBER_WORDS, SHAPES } from '../words/trade-words';
import { addItem } from './item-step';

const SEPARATORS = ['\t', '|', ';', ','] as const;

interface Cell {
  readonly text: string;
  /** Its tokens in the line: from, and to but not included. */
  readonly at: number;
  readonly end: number;
}

/** A table of columns: its heading, and the rows below it. False if the line is no part of one. */
export function tableLine(line: OpenLine, list: OpenList): boolean {
  for (const separator of SEPARATORS) {
    const cells = cellsOf(line, separator);
    if (cells.length < 2) continue;
    const columns = cells.map(({ text }) => COLUMNS.get(text.toLowerCase().replace(/[:.]$/u, '')) ?? null);
    const isHead = columns.every((column) => column !== null) && hasSizes(columns);
    if (isHead) {
      startPart(list);
      list.columns = columns;
      line.kind = 'heading';
      return true;
    }
    if (list.columns?.length === cells.length) return tableRow(line, list, cells, list.columns);
  }
  return false;
}

function hasSizes(columns: readonly (Column | null)[]): boolean {
  return columns.includes('count') && (columns.includes('size') || columns.includes('width'));
}

/** Blank cells at both ends are the borders of the table. */
function cellsOf({ tokens, text }: OpenLine, separator: string): readonly Cell[] {
  const ends = tokens.flatMap((token, at) => (token.kind === 'mark' && token.text === separator ? [at] : []));
  const starts = [0, ...ends.map((at) => at + 1)];
  const cells = starts.map((at, index) => {
    const end = ends[index] ?? tokens.length;
    const [first, last] = [tokens[at], tokens[end - 1]];
    const isEmpty = at >= end || first === undefined || last === undefined;
    return { at, end, text: isEmpty ? '' : text.slice(first.from, last.to) };
  });
  const from = cells[0]?.text === '' ? 1 : 0;
  const to = cells.length > 1 && cells.at(-1)?.text === '' ? cells.length - 1 : cells.length;
  return cells.slice(from, to);
}

function tableRow(
  line: OpenLine,
  list: OpenList,
  cells: readonly Cell[],
  columns: readonly (Column | null)[],
): boolean {
  // The line under the heading of a table that is drawn with dashes.
  if (cells.every(({ text }) => /^[-=: ]*$/u.test(text))) {
    line.kind = 'note';
    return true;
  }
  const item: { count: number | null; sides: ListItem['sides']; shape: ListItem['shape'] } = {
    count: null,
    sides: [],
    shape: null,
  };
  cells.forEach((cell, index) => {
    const column = columns[index] ?? null;
    if (cell.text === '' || column === null) return;
    if (!readCell(line, list, item, cell, column)) mark(line, 'not-understood', cell.at, cell.end);
  });
  if (line.role !== null) list.lineRole = line.role;
  line.kind = 'cut';
  const isSquareLeft = item.shape === 'square' && item.sides.length === 2 && !isSameTwice(item.sides);
  const problem = item.count === null ? 'no-count' : isSquareLeft ? 'sides-differ' : null;
  addItem(line, list, { ...item, fabric: [], problem }, 0, line.tokens.length);
  return true;
}

function isSameTwice([one, other]: ListItem['sides']): boolean {
  return one?.kind === 'length' && other?.kind === 'length' && one.length === other.length;
}

/** False if the cell holds anything but what its column says. */
function readCell(
  line: OpenLine,
  list: OpenList,
  item: { count: number | null; sides: ListItem['sides']; shape: ListItem['shape'] },
  { text, at, end }: Cell,
  column: Column,
): boolean {
  const tokens: Tokens = line.tokens.slice(at, end);
  switch (column) {
    case 'role':
      line.role = takeRole(list, text);
      return line.role !== null && !tokens.some(({ kind }) => kind === 'unit');
    case 'purpose':
      line.purpose = text;
      return !tokens.some(
        ({ kind, text: word }) =>
          kind === 'number' || word === 'cut' || word === 'diagonal' || word === 'each',
      );
    case 'count': {
      const whole = readWhole(tokens, 0);
      const isWhole = whole !== null && whole.next === tokens.length && whole.value > 0;
      if (isWhole) item.count = whole.value;
      return isWhole;
    }
    case 'shape': {
      const shape = SHAPES.get(text.toLowerCase());
      if (shape !== undefined) item.shape = shape;
      return shape !== undefined;
    }
    case 'size':
    case 'width':
    case 'length': {
      const sides = readSides(tokens, 0, list.bareUnit);
      const most = column === 'size' ? 2 : 1;
      if (sides === null || sides.value.length > most) return false;
      const rest = tokens.slice(sides.next);
      const [word] = rest;
      const shape =
        rest.length === 1 && word?.kind === 'word' && !NUMBER_WORDS.has(word.text)
          ? SHAPES.get(word.text)
          : undefined;
      if (shape !== undefined) item.shape = shape;
      item.sides = [...item.sides, ...sides.value];
      return rest.length === 0 || shape !== undefined;
    }
  }
}
