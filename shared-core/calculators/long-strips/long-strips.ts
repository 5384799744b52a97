import { fabricToBuy } from '#core/calculators/fabric-to-buy';
import { success } from '#core/result';
import type { Need } from '#core/domain/need';
import type { PatchList } from '#core/domain/patch-list';
import { joinCost } from '../binding/strip-joins';
import type { Calculator } from '../calculator';
import { cautionNotes } from '../caution-notes';
import type { Figure, Note, Quantity, Table } from '../explanation';
import { fabricNeed } from '../needs';
import { countQuantity, givenLength, lengthUp, sizeQuantity, wordsQuantity } from '../quantities';
import { longStripsDiagram } from './diagram';
import { type LongStripsInput, longStripsFromProject, longStripsInput } from './input';
import { longStripsSteps } from './steps';
import { type LongStripsDetails, planLongStrips } from './work';

const NAME = 'Borders and sashing';

/** Borders and sashing cut along the fabric, compared with strips cut across it and joined. */
export const longStrips: Calculator<LongStripsInput, LongStripsDetails> = {
  name: 'long-strips',
  version: 1,
  title: 'Borders and sashing along the fabric',
  question: 'How much fabric do borders or sashing take without joins, and how much joined?',
  stageKinds: ['piecing'],
  isOccasional: true,
  input: longStripsInput,
  fromProject: longStripsFromProject,
  calculate(input) {
    const plan = planLongStrips(input);
    if (!plan.ok) return plan;
    const details = plan.value;
    return success({
      figures: figuresOf(input, details),
      tables: [cutTable(details), rowsTable(details), waysTable(details)],
      explanation: longStripsSteps(input, details),
      notes: notesOf(input),
      diagram: longStripsDiagram(input, details),
      details,
    });
  },
  needs: longStripsNeeds,
  cuts: longStripsCuts,
};

/** Along: one piece for each row of strips. Across: as many strips as reach. */
function longStripsNeeds(
  input: LongStripsInput,
  { width, along, across }: LongStripsDetails,
): readonly Need[] {
  const fabric = { fabricWidth: input.fabricWidth, extraPercent: input.safetyExtra };
  if (input.way === 'across' && across !== null) {
    const cost = joinCost(input.join, width, input.seamAllowance);
    const strips = { strip: width, needed: across.needed, cost: across.needed > cost ? cost : 0 };
    return [{ ...fabricNeed(NAME, [], fabric), amount: { measure: 'strips', ...strips } }];
  }
  const rows = along.rows.map(({ rows: count, strips, length }) => {
    return { width: strips * width, length, count, mayTurn: false };
  });
  return [fabricNeed(NAME, rows, fabric)];
}

function longStripsCuts(input: LongStripsInput, { width, strips, across }: LongStripsDetails): PatchList {
  if (input.way === 'across' && across !== null) {
    return [{ fabric: NAME, width: input.fabricWidth, length: width, count: across.strips, mayTurn: true }];
  }
  return strips.map(({ cut, count }) => ({ fabric: NAME, width, length: cut, count, mayTurn: false }));
}

function figuresOf(input: LongStripsInput, details: LongStripsDetails): readonly Figure[] {
  const { width, count, along, across } = details;
  const alongFigure: Figure = { label: 'Fabric, cut along it', quantity: lengthUp(along.fabric) };
  const acrossFigure: readonly Figure[] =
    across === null ? [] : [{ label: 'Fabric, cut across it and joined', quantity: lengthUp(across.fabric) }];
  const chosen = input.way === 'across' && across !== null ? across : along;
  return [
    { label: 'Fabric to buy', quantity: fabricToBuy(input, chosen.fabric) },
    alongFigure,
    ...acrossFigure,
    { label: 'Cut width', quantity: givenLength(width) },
    { label: 'Strips', quantity: countQuantity(count, ['strip', 'strips']) },
  ];
}

function cutTable({ strips, width }: LongStripsDetails): Table {
  return {
    title: 'Strips to cut now',
    columns: ['Strip', 'How many', 'Width and length'],
    rows: strips.map(({ name, count, cut }): readonly Quantity[] => [
      wordsQuantity(name),
      countQuantity(count, ['strip', 'strips']),
      sizeQuantity(givenLength(width), givenLength(cut)),
    ]),
  };
}

function rowsTable({ along }: LongStripsDetails): Table {
  return {
    title: 'Along the fabric',
    columns: ['Rows', 'Strips side by side', 'Length of the row'],
    rows: along.rows.map(({ rows, strips, length }): readonly Quantity[] => [
      countQuantity(rows, ['row', 'rows']),
      countQuantity(strips, ['strip', 'strips']),
      givenLength(length),
    ]),
  };
}

function waysTable({ along, across }: LongStripsDetails): Table {
  const row = (
    way: string,
    toBuy: LongStripsDetails['along']['toBuy'],
    joins: number,
  ): readonly Quantity[] => [
    wordsQuantity(way),
    givenLength(toBuy, 'yardage'),
    countQuantity(joins, ['join', 'joins']),
  ];
  return {
    title: 'Both ways',
    columns: ['Way', 'Fabric to buy', 'Joins'],
    rows: [
      row('along the fabric', along.toBuy, 0),
      ...(across === null ? [] : [row('across it, joined', across.toBuy, across.strips - 1)]),
    ],
  };
}

function notesOf({ strips, extraLength }: LongStripsInput): readonly Note[] {
  const measure: Note =
    strips.of === 'border'
      ? {
          kind: 'tip',
          says: 'Cut to width now. Press the top, measure it through its middle, and cut both strips of a pair alike to that length; {extra} is there to trim off. Measure again before the next pair.',
          values: { extra: givenLength(extraLength) },
        }
      : {
          kind: 'tip',
          says: 'Cut to width now, and to length once the rows are sewn and measured; {extra} is there to trim off.',
          values: { extra: givenLength(extraLength) },
        };
  const grain: Note = {
    kind: 'tip',
    says: 'Fabric stretches least along the selvage, so strips cut along it keep their length. Trim the selvage off, and cut long strips before anything else from this fabric.',
    values: {},
  };
  return [measure, grain, ...cautionNotes('rotaryBlade', 'iron')];
}
