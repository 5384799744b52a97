import { centerFind } from '../center/center-find/center-find';
import type { Sentence } from '../explanation';
import { outlineBounds, outlineSlit } from '../outline/outline-measures';
import { fineLength, givenLength, lengthNearest, sizeQuantity, wordsQuantity } from '../quantities';
import { ownSteps, savedNames } from './own-steps';
import { about, answerNow, step, type StepGrounds, type StepGroup } from './step-group';

/** From the center to the cut. Where the binding is sewn on already, there is nothing left to draw or to stay-stitch. */
export function centerCutSteps(grounds: StepGrounds): readonly StepGroup[] {
  return [
    ...ownSteps(savedNames(grounds), grounds),
    { title: 'Cutting the hole', steps: holeSteps(grounds) },
  ];
}

function holeSteps(grounds: StepGrounds): readonly Sentence[] {
  const { measurements, before } = grounds;
  const { hole } = measurements;
  if (hole === null) return [step('Decide the size of the hole first. Its numbers are here then.')];
  if (before.includes('inner-binding')) return boundSteps(grounds);
  const isTrimmed = before.includes('outer-binding');
  return [
    ...(isTrimmed ? [] : straightTrim(grounds)),
    ...centerSteps(grounds),
    ...(isTrimmed ? [] : roundTrim(grounds)),
    ...lineSteps(grounds, hole.diameter),
    ...slitSteps(grounds),
    step('Sew a short stitch beside the cut line wherever a quilting line crosses it.'),
    step(
      'Unfold the project and cut one layer of it, a little inside the line. Try it where it will be used, then cut to the line.',
    ),
  ];
}

function boundSteps({ measurements: { settings } }: StepGrounds): readonly Sentence[] {
  return [
    step('Check that the binding is sewn on all around the hole and along both sides of the slit.'),
    step('Unfold the project and cut along the drawn line, {seam} inside the stitching.', {
      seam: givenLength(settings.seamAllowance),
    }),
    step('Clip as far as the stitching and no further. Then turn the binding to the back.'),
  ];
}

/** A round edge is trimmed from the center, any other edge before the center is measured from it. */
function straightTrim(grounds: StepGrounds): readonly Sentence[] {
  const { outline } = grounds.measurements;
  if (outline.shape === 'circle') return [];
  const { width, length } = outlineBounds(outline);
  return [
    step('Trim the edge with a ruler to about {size}, and its corners with a large square ruler.', {
      size: sizeQuantity(about(width, grounds), about(length, grounds)),
    }),
  ];
}

function roundTrim({ measurements: { outline } }: StepGrounds): readonly Sentence[] {
  if (outline.shape !== 'circle') return [];
  return [
    step('Trim the outer edge: a circle {across} across, {radius} from the center all around.', {
      across: givenLength(outline.diameter),
      radius: fineLength(outline.diameter / 2, 'nearest'),
    }),
  ];
}

function centerSteps(grounds: StepGrounds): readonly Sentence[] {
  const accuracy = answerNow(centerFind, grounds)?.input.accuracy;
  const again = 'Find it again another way, by folding.';
  return [
    foundCenter(grounds),
    accuracy === undefined
      ? step(again)
      : step(`${again} The two marks are no more than {accuracy} apart.`, {
          accuracy: givenLength(accuracy),
        }),
  ];
}

/** Where the maker has measured for the center, it is marked from there. */
function foundCenter(grounds: StepGrounds): Sentence {
  const found = savedNames(grounds).includes(centerFind.name) ? answerNow(centerFind, grounds) : null;
  const [first, second] = found?.calculation.figures ?? [];
  if (first === undefined || second === undefined) {
    return step('Mark the center: measure it from the edges, the same from opposite sides.');
  }
  return step('Mark the center. {one}: {first}. {other}: {second}.', {
    one: wordsQuantity(first.label),
    first: first.quantity,
    other: wordsQuantity(second.label),
    second: second.quantity,
  });
}

function lineSteps({ measurements: { settings } }: StepGrounds, diameter: number): readonly Sentence[] {
  const seam = settings.seamAllowance;
  return [
    step('Draw the cut line: a circle {across} across, {radius} from the center all around.', {
      across: lengthNearest(diameter),
      radius: fineLength(diameter / 2, 'down'),
    }),
    step(
      'The seam of the binding runs {seam} outside it, {line} from the center. Stay-stitch between the two, just beside that seam line.',
      { seam: givenLength(seam), line: fineLength(diameter / 2 + seam, 'down') },
    ),
  ];
}

function slitSteps(grounds: StepGrounds): readonly Sentence[] {
  const { outline, hole, hasSlit, settings } = grounds.measurements;
  const slit = hole === null ? 0 : outlineSlit(outline, hole);
  if (!hasSlit || slit <= 0) return [];
  return [
    step(
      'Draw the slit, about {slit} long from the edge to the hole. Stay-stitch on both sides of it, a little less than {seam} away.',
      { slit: about(slit, grounds), seam: givenLength(settings.seamAllowance) },
    ),
  ];
}
