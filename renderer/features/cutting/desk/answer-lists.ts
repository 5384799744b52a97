import { z } from 'zod';
import type { KeptCalculation } from '#core/contract/calculations';
import { lengthField } from '#core/domain/fields';
import { patchList, type PatchList } from '#core/domain/patch-list';
import { pieceWidthSchema } from '#core/domain/stash';
import { type Length, lengthFromExact } from '#core/units/length';

type Answered = Pick<KeptCalculation, 'calculator' | 'input' | 'answer'>;

/** What a list calls the fabric of a binding, and that of a back. */
const [BINDING, BACKING] = ['Binding', 'Backing'];

const cutLength = lengthField({ title: 'Length' });

const withPatches = z.object({ answer: z.object({ details: z.object({ patchList }) }) });

const outerBinding = z.object({
  input: z.object({ fabricWidth: pieceWidthSchema, stripWidth: cutLength }),
  answer: z.object({
    details: z.object({
      strips: z.int().min(1),
      isBiasNeeded: z.boolean(),
      ways: z.array(
        z.object({
          way: z.string(),
          pieces: z.int().min(1),
          width: z.number().positive(),
          length: z.number().positive(),
        }),
      ),
    }),
  }),
});

const innerBinding = z.object({
  input: z.object({ grain: z.string(), stripWidth: cutLength }),
  answer: z.object({ details: z.object({ stripToCut: cutLength, squareForOneStrip: cutLength }) }),
});

const continuousBias = z.object({
  answer: z.object({ details: z.object({ side: cutLength, squares: z.int().min(1) }) }),
});

const biasStrips = z.object({
  input: z.object({ pieceWidthSchema, pieceLengthSchema: cutLength }),
  answer: z.object({ details: z.object({ isEnough: z.boolean(), leastFabricLength: cutLength.nullable() }) }),
});

const panelWay = z.object({
  fabric: z.object({ width: pieceWidthSchema }),
  panels: z.int().min(1),
  panelLength: cutLength,
  last: z.enum(['whole', 'along', 'across']),
  lastWidth: pieceWidthSchema,
  lastPieces: z.int().min(1),
  lastPieceLength: cutLength,
});

const backing = z.object({
  input: z.object({ printRuns: z.string(), mayJoinLast: z.boolean() }),
  answer: z.object({ details: z.object({ ways: z.array(panelWay), wideWays: z.array(panelWay) }) }),
});

/**
 * Calculators of bindings and backs, and what has to be cut by their answers: strips, the fabric that bias strips are cut from,
 * panels.
 */
const CUT_LATER: Readonly<Record<string, (one: Answered) => PatchList | null>> = {
  'outer-binding': (one) => {
    const read = outerBinding.safeParse(one).data;
    if (read === undefined) return null;
    const { fabricWidth, stripWidth } = read.input;
    const { strips, isBiasNeeded, ways } = read.answer.details;
    if (!isBiasNeeded) return forBinding(fabricWidth, stripWidth, strips);
    const square = ways.find(({ way }) => way === 'continuous-bias');
    if (square === undefined) return null;
    const [width, length] = [square.width, square.length].map((side) => lengthFromExact(side, 'up'));
    return width === undefined || length === undefined ? null : forBinding(width, length, square.pieces);
  },
  'inner-binding': (one) => {
    const read = innerBinding.safeParse(one).data;
    if (read === undefined) return null;
    const { stripToCut, squareForOneStrip } = read.answer.details;
    return read.input.grain === 'bias'
      ? forBinding(squareForOneStrip, squareForOneStrip, 1)
      : forBinding(stripToCut, read.input.stripWidth, 1);
  },
  'continuous-bias': (one) => {
    const details = continuousBias.safeParse(one).data?.answer.details;
    return details === undefined ? null : forBinding(details.side, details.side, details.squares);
  },
  'bias-strips': (one) => {
    const read = biasStrips.safeParse(one).data;
    if (read === undefined) return null;
    const { isEnough, leastFabricLength } = read.answer.details;
    if (leastFabricLength === null) return null;
    return forBinding(
      read.input.pieceWidthSchema,
      isEnough ? read.input.pieceLengthSchema : leastFabricLength,
      1,
    );
  },
  backing: (one) => {
    const read = backing.safeParse(one).data;
    if (read === undefined) return null;
    const { printRuns, mayJoinLast } = read.input;
    const { ways, wideWays } = read.answer.details;
    const way = [ways, wideWays]
      .map((some) => some.find(({ last }) => mayJoinLast || last === 'whole'))
      .find((best) => best !== undefined);
    return way === undefined ? null : panelsOf(way, printRuns === 'any-way');
  },
};

/** Panels as wide as their fabric, and the narrower last one or the strips it is joined from. */
function panelsOf(way: z.infer<typeof panelWay>, mayTurn: boolean): PatchList {
  const panel = { fabric: BACKING, width: way.fabric.width, length: way.panelLength, mayTurn };
  const [width, length] =
    way.last === 'across' ? [way.lastPieceLength, way.lastWidth] : [way.lastWidth, way.lastPieceLength];
  const isAlike = width === panel.width && length === panel.length;
  return [
    { ...panel, count: isAlike ? way.panels : way.panels - 1 },
    { fabric: BACKING, width, length, count: isAlike ? 0 : way.lastPieces, mayTurn },
  ].filter(({ count }) => count > 0);
}

/** What has to be cut by a kept answer; null where it says nothing of the kind. */
export function cutsOfAnswer(one: Answered): PatchList | null {
  const own = CUT_LATER[one.calculator];
  if (own !== undefined) return own(one);
  const read = withPatches.safeParse(one).data?.answer.details.patchList ?? [];
  return read.length > 0 ? read : null;
}

/** Whether what is cut by these answers is for a binding or a back: it is often cut later, and from other fabric. */
export function isCutLater(calculator: string): boolean {
  return CUT_LATER[calculator] !== undefined;
}

function forBinding(width: Length, length: Length, count: number): PatchList {
  return [{ fabric: BINDING, width, length, count, mayTurn: true }];
}
