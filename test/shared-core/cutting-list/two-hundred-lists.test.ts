import { describe, expect, it } from 'vitest';
import type { ListLine } from '#core/cutting-list/list-reading';
import { readCuttingList } from '#core/cutting-list/read-cutting-list';
import lists from '#test/fixtures/cutting-lists.json';

interface ExpectedLine {
  readonly text: string;
  /** Shape, width, length (null: the width of the fabric), how many to cut, how many they give, fabric. */
  readonly patches?: readonly (readonly (string | number | null)[])[];
  readonly stated?: readonly object[];
  /** It leaves open what to cut, so that no reading without a mark is right. */
  readonly isToBeMarked?: boolean;
}

interface ReadBeside {
  readonly expected: ExpectedLine;
  readonly line: ListLine;
}

const read: readonly ReadBeside[] = lists.flatMap(({ lines }) => {
  const expected: readonly ExpectedLine[] = lines;
  const reading = readCuttingList(expected.map(({ text }) => text).join('\n'), 'in');
  return expected.flatMap((one, index) => {
    const line = reading.lines[index];
    return line === undefined ? [] : [{ expected: one, line }];
  });
});

function isAsExpected({ expected, line }: ReadBeside): boolean {
  const patches = line.patches.map(({ shape, width, length, cut, count, role }) => [
    shape,
    width,
    length,
    cut,
    count,
    role,
  ]);
  const plain = (value: unknown) => JSON.stringify(value).toLowerCase();
  return (
    plain(patches) === plain(expected.patches ?? []) && plain(line.stated) === plain(expected.stated ?? [])
  );
}

function isRight(beside: ReadBeside): boolean {
  const isMarked = beside.line.marks.length > 0;
  return beside.expected.isToBeMarked === true ? isMarked : !isMarked && isAsExpected(beside);
}

describe('two hundred invented lists in twenty manners', () => {
  it('are there, line for line', () => {
    expect(lists).toHaveLength(200);
    expect(new Set(lists.map(({ manner }) => manner)).size).toBe(20);
    expect(read).toHaveLength(lists.flatMap(({ lines }) => lines).length);
  });

  it('are read right in at least 95 % of their lines', () => {
    const wrong = read.filter((beside) => !isRight(beside)).map(({ expected }) => expected.text);
    expect(wrong.length / read.length, wrong.slice(0, 20).join('\n')).toBeLessThanOrEqual(0.05);
  });

  it('have no line that is wrong without a mark', () => {
    const wrong = read.filter((beside) => beside.line.marks.length === 0 && !isRight(beside));
    expect(wrong.map(({ expected }) => expected.text)).toEqual([]);
  });
});
