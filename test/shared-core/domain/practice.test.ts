import fs from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { answerCalculator } from '#core/calculators/complete-input';
import { calculatorByName } from '#core/calculators/registry';
import type { StageKind } from '#core/domain/stage-kinds';
import { STARTING_PLANS } from '#core/domain/starting-plans';
import { STARTING_PACKING } from '#core/domain/trip';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';

const SKIRT = 'Tree skirt';
const DRAWN = 'Tree skirt, bound before the cut';
const RING = 'Tree skirt, closed ring';

/** The lines of a stage's list. */
function list(plan: string, kind: StageKind): readonly string[] {
  const stages = STARTING_PLANS.find(({ name }) => name === plan)?.stages ?? [];
  return stages
    .filter((stage) => stage.kind === kind)
    .flatMap(({ checklist }) => checklist.map(({ text }) => text));
}

/** The kinds of a plan's stages in order. */
function order(plan: string): readonly string[] {
  const stages = STARTING_PLANS.find(({ name }) => name === plan)?.stages ?? [];
  return [stages.map(({ kind }) => kind).join(', ')];
}

/** The notes of an answer, asked with these fields. */
function notes(name: string, own: object = {}): readonly string[] {
  const calculator = calculatorByName(name);
  if (calculator === undefined) throw new Error(`There is no calculator ${name}`);
  const answer = answerCalculator(calculator, SAMPLE_MEASUREMENTS, own);
  return answer.ok ? answer.value.calculation.notes.map(({ says }) => says) : [];
}

/** The words beside a field of a calculator. */
function help(name: string): readonly string[] {
  const schema = calculatorByName(name)?.input.toJSONSchema({ unrepresentable: 'any' });
  return [JSON.stringify(schema)];
}

const packing = () => STARTING_PACKING.map(({ text }) => text);

interface Fact {
  readonly fact: string;
  /** Keys of `test/sources.md`. */
  readonly read: readonly string[];
  /** Where the program says it, and in which words. */
  readonly stands: () => readonly string[];
  readonly says: RegExp;
}

/** Common practice: what experienced makers do, with the pages where it was read, and where the notebook says it. */
const FACTS: readonly Fact[] = [
  {
    fact: 'a slit skirt is cut open first, then one binding goes around all of it',
    read: ['P07', 'P08', 'P09', 'P10', 'P11', 'P12'],
    stands: () => order(SKIRT),
    says: /center-cut, outer-binding, hand-finish$/,
  },
  {
    fact: 'or the binding is sewn to the drawn lines, and the cut comes after',
    read: ['P06', 'P14', 'P15', 'P16'],
    stands: () => order(DRAWN),
    says: /inner-binding, center-cut, outer-binding/,
  },
  {
    fact: 'a slit is cut beside a seam',
    read: ['P17', 'P18'],
    stands: () => list(SKIRT, 'center-cut'),
    says: /Slit drawn .* cut beside the seam/,
  },
  {
    fact: 'or that one seam is left open while piecing',
    read: ['P19'],
    stands: () => list(SKIRT, 'piecing'),
    says: /Slit planned: beside the seams, or that one seam left open/,
  },
  {
    fact: 'stay-stitching lies within the seam allowance',
    read: ['P04', 'P20', 'P21', 'P22', 'P23', 'P24', 'P25'],
    stands: () => list(RING, 'center-cut'),
    says: /Stay-stitched within the seam allowance, just beside the seam line/,
  },
  {
    fact: 'a hole that crosses seams is usual in wedges and stars',
    read: ['P03', 'P07', 'P08', 'P26', 'P27'],
    stands: () => help('center-clearance'),
    says: /Wedges, stars and blocks that meet in the middle have seams there, and the hole crosses them all/,
  },
  {
    fact: 'the quilter is asked which way the backing seams run',
    read: ['P28', 'P29', 'P30', 'P31', 'P32', 'P33'],
    stands: () => notes('backing'),
    says: /Ask your quilter which way the seam should run; most want it parallel to the rollers/,
  },
  {
    fact: 'marks come out before any iron: heat sets some, and others come back in the cold',
    read: ['P35', 'P36', 'P37', 'P38', 'P39'],
    stands: () => list(RING, 'hand-finish'),
    says: /Marks taken out .* before any iron/,
  },
  {
    fact: 'polyester batting takes a cool iron',
    read: ['P40', 'P41'],
    stands: () => list(RING, 'hand-finish'),
    says: /cool iron where the batting is polyester/,
  },
  {
    fact: 'border strips are cut first, and to length by the top as measured through its middle',
    read: ['P28', 'P42', 'P43', 'P44', 'P45', 'P46', 'P47'],
    stands: () => list('Throw', 'piecing'),
    says: /Border strips cut first, .*to length once the pressed top is measured through the middle/,
  },
  {
    fact: 'the upper edge is marked with a safety pin or a note',
    read: ['P21', 'P28', 'P30', 'P42', 'P48'],
    stands: packing,
    says: /upper edge marked with a safety pin or note/,
  },
  {
    fact: 'layers are not pinned together, and each is folded by itself',
    read: ['P21', 'P29', 'P33', 'P48', 'P65'],
    stands: packing,
    says: /Straight pins .* layers folded each by itself/,
  },
  {
    fact: 'a top is sent unwashed',
    read: ['P21', 'P29', 'P33', 'P48', 'P65'],
    stands: packing,
    says: /Top, pressed, not washed/,
  },
  {
    fact: 'buttons, beads and thick embroidery wait until after the quilting',
    read: ['P21', 'P29', 'P33', 'P48', 'P65'],
    stands: packing,
    says: /No buttons, beads or thick embroidery/,
  },
  {
    fact: 'what is sent is free of hair and smoke',
    read: ['P21', 'P29', 'P33', 'P48', 'P65'],
    stands: packing,
    says: /free of pet hair and smoke/,
  },
  {
    fact: 'a backing is squared before it is sent',
    read: ['P21', 'P29', 'P30', 'P33', 'P48', 'P65'],
    stands: packing,
    says: /Backing, squared and pressed/,
  },
  {
    fact: 'how much larger a backing must be is for the quilter to say: 3 to 6 in on each side',
    read: ['P21', 'P28', 'P34', 'P46', 'P65'],
    stands: () => help('backing'),
    says: /Ask your quilter: most want 3 to 6 in on each side/,
  },
  {
    fact: 'a curved edge is trimmed, and a hole cut, only after the quilting',
    read: ['P06', 'P33'],
    stands: () => list(SKIRT, 'longarm'),
    says: /Hole and slit not cut, curved edge not trimmed/,
  },
  {
    fact: 'the quilter is told where the hole will be',
    read: ['P33'],
    stands: () => list(RING, 'longarm'),
    says: /Quilter told where hole and slit will be/,
  },
  {
    fact: 'hand sewing a binding: 50 to 90 in an hour',
    read: ['P49', 'P50', 'P51'],
    stands: () => help('hand-finish'),
    says: /50 to 90 in is common practice/,
  },
  {
    fact: 'a binding that is washed often is sewn down by machine',
    read: ['P11', 'P69'],
    stands: () => list(RING, 'hand-finish'),
    says: /by hand, or by machine if it is washed often/,
  },
  {
    fact: 'by machine, the binding is sewn to the back first, and takes less time than by hand',
    read: ['P69'],
    stands: () => notes('hand-finish'),
    says: /sew the binding to the back first .* far less time/,
  },
  {
    fact: 'a seam is tested on three strips, and a scant one makes up for the fold',
    read: ['P52', 'P53'],
    stands: () => notes('accuracy'),
    says: /Sew three strips together, measure the middle one.* scant seam/,
  },
  {
    fact: 'a closed ring is measured against the widest part that has to pass',
    read: ['P17', 'P54'],
    stands: () => list(RING, 'center-cut'),
    says: /pass through measured at its widest/,
  },
  {
    fact: 'ties and tape of a slit go in with its binding',
    read: ['P08', 'P09', 'P10', 'P13'],
    stands: () => list(SKIRT, 'outer-binding'),
    says: /ties or tape caught in the binding, buttons or snaps sewn on later/,
  },
  {
    fact: 'a quilt is squared, then basted around its edge, before it is bound',
    read: ['P24', 'P25', 'P55', 'P56'],
    stands: () => list('Throw', 'outer-binding'),
    says: /Corners squared with a large ruler, then the layers basted around the edge/,
  },
  {
    fact: 'a binding starts in the middle of a side, and no join meets a corner',
    read: ['P25', 'P57', 'P58', 'P59', 'P60'],
    stands: () => list('Throw', 'outer-binding'),
    says: /middle of a side; no join meets a corner/,
  },
  {
    fact: 'around an outside curve the strip is eased in, never stretched',
    read: ['P01', 'P02', 'P04', 'P05'],
    stands: () => list('Throw', 'outer-binding'),
    says: /Curved edge: strip eased in, never stretched/,
  },
  {
    fact: 'around a hole a slight tug is enough (one teacher)',
    read: ['P05'],
    stands: () => list(RING, 'inner-binding'),
    says: /Sewn just taut, never pulled hard/,
  },
  {
    fact: 'bias from a stripe is cut from a single layer',
    read: ['P10'],
    stands: () => list('Throw', 'outer-binding'),
    says: /striped or one-way print cut from a single layer/,
  },
  {
    fact: 'strong colors are tried for bleeding before they are cut',
    read: ['P61', 'P62', 'P63'],
    stands: () => list('Throw', 'piecing'),
    says: /Strong colors tried wet on white fabric/,
  },
  {
    fact: 'seams are pressed so that they nest, or open where many meet',
    read: ['P41', 'P64'],
    stands: () => list('Throw', 'piecing'),
    says: /Seams pressed so that they nest, or open where many meet/,
  },
  {
    fact: 'a short stitch beside the cut holds the quilting lines that are cut through',
    read: ['P66'],
    stands: () => list(RING, 'center-cut'),
    says: /short stitch beside the cut/,
  },
  {
    fact: 'steam shapes a bias strip into a curve before it is sewn',
    read: ['P67'],
    stands: () => list(RING, 'inner-binding'),
    says: /steamed into a curve/,
  },
  {
    fact: 'a hanging sleeve goes in with the binding',
    read: ['P25', 'P68'],
    stands: () => list('Throw', 'outer-binding'),
    says: /Hanging sleeve and label, if it gets them, sewn in with the binding/,
  },
  {
    fact: 'a color-catching sheet goes with the first wash',
    read: ['P62', 'P63'],
    stands: () => list('Throw', 'hand-finish'),
    says: /Care card written; a color-catching sheet for the first wash/,
  },
  {
    fact: 'setting triangles are often cut larger and trimmed',
    read: ['P70'],
    stands: () => notes('patch-size', { unit: { unit: 'side-setting-triangles', block: 8128 * 12 } }),
    says: /cut setting triangles larger and trim/,
  },
  {
    fact: 'a pole takes about 1/4 in of ease',
    read: ['P71', 'P72'],
    stands: () => help('hole-size'),
    says: /1\/4 in \(6 mm\) for a pole/,
  },
];

test.each(FACTS)('common practice: $fact', ({ stands, says }) => {
  expect(stands().filter((text) => says.test(text))).not.toEqual([]);
});

test('every page that was read is in the list of sources, and every page of the list is used', () => {
  const file = path.resolve(import.meta.dirname, '../../sources.md');
  const listed = [...fs.readFileSync(file, 'utf8').matchAll(/^\| (P\d\d) +\|/gm)].map(([, key]) => key);
  const used = new Set(FACTS.flatMap(({ read }) => read));
  expect(listed.toSorted()).toEqual([...used].toSorted());
});
