import type { PatchList } from '#core/domain/patch-list';
import { failure, type Result, success } from '#core/result';
import { lengthSubtract, lengthTimes } from '#core/units/length';
import { roundUpTo } from '#core/units/rounding';
import type { Calculation, Calculator, Refusal } from '../calculator';
import type { Figure, Note } from '../explanation';
import { needsOfPatchList } from '../needs';
import { PIECING_CAUTIONS } from '../patches/piecing-cautions';
import {
  countQuantity,
  degreesQuantity,
  fineLength,
  givenLength,
  lengthNearest,
  lengthUp,
  yardageUp,
} from '../quantities';
import { hasRoomForArcs } from './arc-wedge';
import { bandTables } from './band-tables';
import { bandsShort } from './bands';
import { wedgeRingDiagram } from './diagram';
import { edgeTables, openingNote } from './edge-tables';
import { wedgeRingFromProject, wedgeRingInput, type WedgeRingInput } from './input';
import { refuseNoWidth } from './ring-fields';
import { wedgeRingSteps } from './steps';
import { stripWidth, stripWords } from './strip-words';
import { ringMethodTable, wedgeTables } from './tables';
import { patchListOf, type WedgeRingWork, workOutWedgeRing } from './work';

interface WedgeRingDetails extends WedgeRingWork {
  readonly patchList: PatchList;
}

/** A ring of equal wedges, plain or of bands, with straight or curved edges: their sizes, and the strips they come from. */
export const wedgeRing: Calculator<WedgeRingInput, WedgeRingDetails> = {
  name: 'wedge-ring',
  version: 2,
  title: 'A ring of wedges',
  question: 'What size do I cut the wedges of a ring, and how much fabric do they take?',
  stageKinds: ['piecing'],
  isOccasional: true,
  input: wedgeRingInput,
  fromProject: wedgeRingFromProject,
  calculate: calculateWedgeRing,
  needs: (input, { patchList }) => needsOfPatchList(patchList, input),
  cuts: (_, { patchList }) => patchList,
};

function calculateWedgeRing(input: WedgeRingInput): Result<Calculation<WedgeRingDetails>, Refusal> {
  const refusal = refusalOf(input);
  if (refusal !== null) return failure(refusal);
  const work = workOutWedgeRing(input);
  if (work.perStrip === 0) return failure(refuseTooLong(input, work));
  return success({
    figures: figuresOf(input, work),
    tables: [
      ...wedgeTables(input, work),
      ...bandTables(input, work),
      ...edgeTables(input, work),
      ringMethodTable(input, work),
    ],
    explanation: wedgeRingSteps(input, work),
    notes: notesOf(input, work),
    diagram: wedgeRingDiagram(input, work),
    details: { ...work, patchList: patchListOf(input, work) },
  });
}

function refusalOf(input: WedgeRingInput): Refusal | null {
  if (input.innerRadius >= input.outerRadius) return refuseNoWidth(input);
  if (input.edge === 'arcs' && !hasRoomForArcs(input)) return refuseArcs(input);
  return Math.abs(bandsShort(input)) >= input.cutStep ? refuseBands(input) : null;
}

function refuseArcs({ innerRadius, seamAllowance }: WedgeRingInput): Refusal {
  return {
    code: 'no-room-for-arcs',
    field: ['innerRadius'],
    says: 'An inner edge {inner} from the middle is too near for arcs: the seams of {seam} would meet there. Take more than {least}.',
    values: {
      inner: givenLength(innerRadius),
      seam: givenLength(seamAllowance),
      least: givenLength(lengthTimes(seamAllowance, 2)),
    },
  };
}

/** Bands that miss the height by less than a step are made up by the outermost one. */
function refuseBands(input: WedgeRingInput): Refusal {
  const short = bandsShort(input);
  return {
    code: 'bands-do-not-fit',
    field: ['bands'],
    says:
      short > 0
        ? 'The bands are {off} narrower together than the wedge is high: {height} from the inner to the outer edge.'
        : 'The bands are {off} wider together than the wedge is high: {height} from the inner to the outer edge.',
    values: {
      off: fineLength(Math.abs(short), 'nearest'),
      height: givenLength(lengthSubtract(input.outerRadius, input.innerRadius)),
    },
  };
}

function refuseTooLong({ fabricWidth }: WedgeRingInput, { fromStrip }: WedgeRingWork): Refusal {
  return {
    code: 'wedge-too-long',
    field: ['wedges'],
    says: 'The long side of a wedge is {long}, and the fabric is only {width} wide. Use more wedges.',
    values: { long: lengthUp(fromStrip.long), width: givenLength(fabricWidth) },
  };
}

function figuresOf(input: WedgeRingInput, work: WedgeRingWork): readonly Figure[] {
  const { half, fabrics, set } = work;
  return [
    ...sizeFigures(input, work),
    ...fabrics.map(({ name, withExtra }) => ({
      label: `Fabric, ${set === null ? 'wedges' : name}`,
      quantity: yardageUp(withExtra, input.yardageStep),
    })),
    {
      label: set === null ? 'Strips' : 'Strip sets',
      quantity: countQuantity(work.strips, stripWords(work)),
    },
    {
      label: set === null ? 'Wedges from a strip' : 'Wedges from a set',
      quantity: countQuantity(work.perStrip, ['wedge', 'wedges']),
    },
    { label: 'Angle of a wedge', quantity: degreesQuantity((360 * half) / Math.PI) },
    ...edgeFigures(work),
  ];
}

function sizeFigures(input: WedgeRingInput, work: WedgeRingWork): readonly Figure[] {
  const { cut, arcs } = work;
  const height: Figure = {
    label: work.set === null ? 'Width of a strip, cut' : 'Width of a set, as sewn',
    quantity: stripWidth(input, work),
  };
  if (arcs === null)
    return [
      { label: 'Long side, cut', quantity: fineLength(cut.long, 'up') },
      { label: 'Short side, cut', quantity: fineLength(cut.short, 'up') },
      height,
    ];
  return [
    { label: 'Outer arc from corner to corner, cut', quantity: fineLength(arcs.cut.outer.chord, 'up') },
    { label: 'Inner arc from corner to corner, cut', quantity: fineLength(arcs.cut.inner.chord, 'up') },
    height,
  ];
}

function edgeFigures({ arcs, beyondCircle, sagitta }: WedgeRingWork): readonly Figure[] {
  const arc: Figure = { label: 'A true arc rises above its chord by', quantity: lengthNearest(sagitta) };
  return arcs === null
    ? [{ label: 'Corners reach beyond the circle by', quantity: lengthNearest(beyondCircle) }, arc]
    : [arc];
}

function notesOf(input: WedgeRingInput, work: WedgeRingWork): readonly Note[] {
  const upright = roundUpTo(work.perStripHeadToTail / 2, 1);
  const bands: Note = {
    kind: 'tip',
    says: 'From a strip sewn of bands, laid head to tail, {upright} have the bands in one order and {reversed} in the other. For one order only, cut them all the same way up.',
    values: {
      upright: countQuantity(upright, ['wedge', 'wedges']),
      reversed: countQuantity(work.perStripHeadToTail - upright, ['wedge', 'wedges']),
    },
  };
  const round: Note = {
    kind: 'tip',
    says: 'For a round outer edge, trim a circle that touches the middle of every side. It takes {beyond} off each corner. A round hole crosses {seams}.',
    values: {
      beyond: lengthNearest(work.beyondCircle),
      seams: countQuantity(input.wedges, ['seam', 'seams']),
    },
  };
  const template: Note = {
    kind: 'tip',
    says: 'Draw the arcs with a string or a yardstick compass from one point, {radius} for the cut outer edge, on paper or template plastic. Clip no curve here: the arcs are edges, and only the legs are seams.',
    values: { radius: lengthNearest(work.arcs?.cut.outer.radius ?? 0) },
  };
  const angle: Note = {
    kind: 'tip',
    says: 'Cut the legs by the angle, or from a template. Two sides rounded by different amounts change the angle, and the ring would not lie flat.',
    values: {},
  };
  return [
    ...PIECING_CAUTIONS,
    ...openingNote(input, work),
    angle,
    ...(work.perStripHeadToTail > 1 && work.set === null ? [bands] : []),
    ...(work.arcs === null ? [round] : [template]),
  ];
}
