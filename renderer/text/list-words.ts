import { assertNever } from '#core/assert-never';
import type { ListLine, ListPatch, MarkCode, StatedAmount } from '#core/cutting-list/list-reading';
import { LEFT_OUT } from '#core/cutting-list/write-line';
import { formatLength, formatYardage } from '#core/units/format-length';
import type { LengthDisplay } from '#core/units/unit-system';
import { counted } from './cut-words';
import { sizeWords } from './size-words';

/** What a mark on a line of a cutting list asks the maker to look at. */
export const MARK_WORDS: Readonly<Record<MarkCode, string>> = {
  'not-understood': 'Not understood.',
  'no-count': 'How many?',
  'no-size': 'Which size?',
  'no-shape': 'A square, a rectangle or a strip?',
  'no-fabric': 'Which fabric?',
  'fabric-unclear': 'Which fabric is meant?',
  'sides-differ': 'Called squares, but the two sides differ.',
  'number-unclear': 'Which number is the count, and which the size?',
  'count-differs': 'The number given here is not the number that the cuts give.',
  'more-than-strips-give': 'These strips don’t give that many patches.',
  'no-strips': 'Cut from which strips?',
  'strip-length-missing': 'How long is the strip? It is taken to go across the fabric.',
  'each-or-all': 'Are the numbers below for one block, or for all of them? They are taken to be for all.',
  'block-count-missing': 'How many blocks are made?',
  'once-or-twice': 'Cut once or twice on the diagonal? It is taken to be once.',
  'which-patches': 'Which patches is this said of?',
  'name-unclear': 'Is this the name of a fabric? Then put a colon after it.',
  'amounts-differ': 'The two amounts are not the same.',
};

/** What was understood of a line, in a few words. Empty where there is nothing to say. */
export function lineWords(line: ListLine, display: LengthDisplay): readonly string[] {
  const strips = line.strips.map(
    ({ count, width }) => `${counted(count, 'strip')} ${formatLength(width, display)} wide, cut up into:`,
  );
  const patches = line.patches.map((patch) => patchWords(patch, display));
  const stated = line.stated.map((one) => statedWords(one, display));
  return [...kindWords(line), ...strips, ...patches, ...stated];
}

function kindWords({ kind, text, role, block }: ListLine): readonly string[] {
  if (kind === 'note') return [text.trimStart().startsWith(LEFT_OUT.trim()) ? 'Left out' : 'A note'];
  if (kind !== 'heading') return [];
  if (role !== null) return [`Fabric: ${role}`];
  return block === null ? ['A heading'] : [`Block: ${block}`];
}

function patchWords(patch: ListPatch, display: LengthDisplay): string {
  const { width, length, role, purpose } = patch;
  const size =
    length === null
      ? `${formatLength(width, display)} wide, across the fabric`
      : width === length
        ? formatLength(width, display)
        : sizeWords({ width, length }, display);
  const from = role === null ? '' : `, ${role}`;
  return `${shapeWords(patch)} ${size}${from}${purpose === null ? '' : ` (${purpose})`}`;
}

function shapeWords({ shape, cut, count }: ListPatch): string {
  switch (shape) {
    case 'square':
      return counted(cut, 'square');
    case 'rectangle':
      return counted(cut, 'rectangle');
    case 'strip':
      return counted(cut, 'strip');
    case 'half-square-triangle':
      return `${String(count)} half-square triangles from ${counted(cut, 'square')}`;
    case 'quarter-square-triangle':
      return `${String(count)} quarter-square triangles from ${counted(cut, 'square')}`;
    case 'half-rectangle-triangle':
      return `${String(count)} triangles from ${counted(cut, 'rectangle')}`;
    default:
      return assertNever(shape);
  }
}

function statedWords(stated: StatedAmount, display: LengthDisplay): string {
  switch (stated.what) {
    case 'fabric':
      return `It asks for ${formatYardage(stated.length, display)}${stated.role === null ? '' : ` of ${stated.role}`}`;
    case 'fat-quarters':
      return `It asks for ${counted(stated.count, 'fat quarter')}${stated.role === null ? '' : ` of ${stated.role}`}`;
    case 'finished-size':
      return `Finished size: ${sizeWords(stated, display)}`;
    case 'block-size':
      return `Block: ${sizeWords(stated, display)}`;
    default:
      return assertNever(stated);
  }
}
