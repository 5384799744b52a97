import type { PatchList } from '#core/domain/patch-list';
import { failure, type Result, success } from '#core/result';
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
import { wedgeRingDiagram } from './diagram';
import { wedgeRingFromProject, wedgeRingInput, type WedgeRingInput } from './input';
import { refuseNoWidth } from './ring-fields';
import { stripWidth, wedgeRingSteps } from './steps';
import { ringMethodTable, wedgeTable } from './tables';
import { type WedgeRingWork, workOutWedgeRing } from './work';

interface WedgeRingDetails extends WedgeRingWork {
  readonly patchList: PatchList;
}

/** A ring of equal wedges with straight sides: their sizes finished and cut, and the strips they come from. */
export const wedgeRing: Calculator<WedgeRingInput, WedgeRingDetails> = {
  name: 'wedge-ring',
  version: 1,
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
  if (input.innerRadius >= input.outerRadius) return failure(refuseNoWidth(input));
  const work = workOutWedgeRing(input);
  if (work.perStrip === 0) return failure(refuseTooLong(input, work));
  const { fabricWidth } = input;
  const patchList: PatchList = [
    { fabric: 'Wedges', width: fabricWidth, length: work.strip, count: work.strips, mayTurn: false },
  ];
  return success({
    figures: figuresOf(input, work),
    tables: [wedgeTable(input, work), ringMethodTable(input, work)],
    explanation: wedgeRingSteps(input, work),
    notes: notesOf(input, work),
    diagram: wedgeRingDiagram(input, work),
    details: { ...work, patchList },
  });
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
  const { cut, half } = work;
  return [
    { label: 'Long side, cut', quantity: fineLength(cut.long, 'up') },
    { label: 'Short side, cut', quantity: fineLength(cut.short, 'up') },
    { label: 'Width of a strip, cut', quantity: stripWidth(input, cut.height) },
    { label: 'Fabric, wedges', quantity: yardageUp(work.withExtra, input.yardageStep) },
    { label: 'Strips', quantity: countQuantity(work.strips, ['strip', 'strips']) },
    { label: 'Wedges from a strip', quantity: countQuantity(work.perStrip, ['wedge', 'wedges']) },
    { label: 'Angle of a wedge', quantity: degreesQuantity((360 * half) / Math.PI) },
    { label: 'Corners reach beyond the circle by', quantity: lengthNearest(work.beyondCircle) },
    { label: 'A true arc rises above its chord by', quantity: lengthNearest(work.sagitta) },
  ];
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
  const angle: Note = {
    kind: 'tip',
    says: 'Cut the legs by the angle, or from a template. Two sides rounded by different amounts change the angle, and the ring would not lie flat.',
    values: {},
  };
  return [...PIECING_CAUTIONS, angle, ...(work.perStripHeadToTail > 1 ? [bands] : []), round];
}
