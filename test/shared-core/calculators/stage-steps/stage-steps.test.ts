import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Sentence } from '#core/calculators/explanation';
import { formatSentence } from '#core/calculators/format-quantity';
import { calculators } from '#core/calculators/registry';
import type { StageAnswer, StepGroup } from '#core/calculators/stage-steps/step-group';
import { stageSteps } from '#core/calculators/stage-steps/stage-steps';
import { top } from '#core/calculators/top/top';
import type { Measurements } from '#core/domain/measurements';
import { STAGE_KINDS, type StageKind } from '#core/domain/stage-kinds';
import { STARTING_PLANS } from '#core/domain/starting-plans';
import { lengthFromInches as inches } from '#core/units/length';
import { currencyFromCode } from '#core/units/money';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';
import { anyMeasurements } from '#test/helpers/measurements';

const kinds = Object.keys(STAGE_KINDS) as StageKind[];
const INCHES = {
  display: { system: 'inch', inchStep: 8 },
  currency: currencyFromCode('USD'),
  locale: 'en-US',
} as const;

const saved = (...names: readonly string[]): readonly StageAnswer[] =>
  names.map((calculator, savedAt) => ({ calculator, ownInput: {}, savedAt }));

/** A skirt 50 in across with a hole of 6 in and a slit. */
const skirt: Measurements = {
  ...SAMPLE_MEASUREMENTS,
  outline: { shape: 'circle', diameter: inches(50) },
  hole: { diameter: inches(6) },
};

interface Asked {
  readonly measurements?: Measurements;
  readonly before?: readonly StageKind[];
  readonly answers?: readonly StageAnswer[];
}

function groupsOf(
  kind: StageKind,
  { measurements = skirt, before = [], answers = [] }: Asked = {},
): readonly StepGroup[] {
  return stageSteps({ stage: { kind }, before, measurements, answers });
}

const written = (sentence: Sentence) => formatSentence(sentence, INCHES);
const linesOf = (kind: StageKind, asked?: Asked) =>
  groupsOf(kind, asked).flatMap(({ steps }) => steps.map(written));

describe('the steps of a stage', () => {
  it('can be written for any project, whatever was answered', () => {
    const everything = saved(...calculators.map(({ name }) => name));
    fc.assert(
      fc.property(
        anyMeasurements,
        fc.constantFrom(...kinds),
        fc.boolean(),
        (measurements, kind, isAnswered) => {
          for (const line of linesOf(kind, { measurements, answers: isAnswered ? everything : [] })) {
            expect(line).not.toMatch(/[{}]|NaN|undefined|Infinity/);
            expect(line.trim()).not.toBe('');
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  it('have no number typed into them: each comes from a fact or an answer', () => {
    for (const kind of kinds) {
      const own = groupsOf(kind, { answers: saved('patch-size', 'top', 'center-find') });
      for (const { says } of own
        .filter(({ title }) => !title.endsWith('step by step'))
        .flatMap(({ steps }) => steps)) {
        expect(says.replaceAll(/\{\w+\}/g, ''), says).not.toMatch(/\d/);
      }
    }
  });

  it('are there for every stage of every starting plan', () => {
    for (const { name, stages } of STARTING_PLANS) {
      stages.forEach(({ kind }, index) => {
        const before = stages.slice(0, index).map((stage) => stage.kind);
        expect(groupsOf(kind, { before }).length, `${name}: ${kind}`).toBeGreaterThan(0);
      });
    }
  });

  it('show a calculator’s own table of the work, each measure with the sentence that asks for it', () => {
    const groups = groupsOf('outer-binding', { answers: saved('continuous-bias') });
    const bias = groups.find(({ title }) => title === 'Continuous bias, step by step');
    expect(bias?.steps.map(written)).toContain(
      'On the wrong side, draw lines parallel to the slanted edge, this far apart: 2½ in.',
    );
    expect(linesOf('outer-binding')).toContain(
      'Sew it to the front with this seam: ¼ in. Feed the strip in generously around the curve, and never stretch it.',
    );
    expect(linesOf('piecing', { answers: saved('wedge-ring') })).toContain('The other half has: 8 wedges.');
  });

  it.each([
    [/\b(cut|trim|square)\b/i, ['rotaryBlade', 'scissors']],
    [/\b(press|iron)\b/i, ['iron']],
    [/\b(sew|stitch|join|quilt)\b/i, ['machineNeedle', 'handNeedle']],
    [/\b(pins?|baste|needle)\b/i, ['pins', 'handNeedle', 'machineNeedle']],
  ])('that say %s come with the caution for it', (tool, usual) => {
    for (const kind of kinds) {
      const says = groupsOf(kind, {
        answers: kind.endsWith('binding') ? saved('continuous-bias') : [],
      }).flatMap(({ steps }) => steps.map(written));
      const has = (STAGE_KINDS[kind].cautions as readonly string[]).some((caution) =>
        usual.includes(caution),
      );
      if (kind !== 'other' && tool.test(says.join(' '))) expect(has, kind).toBe(true);
    }
  });

  it('of a stage of the maker’s own are those of its answers', () => {
    expect(groupsOf('other')).toEqual([]);
    expect(groupsOf('other', { answers: saved('wedge-ring') })).toHaveLength(1);
  });
});

describe('piecing', () => {
  it('lists the cuts of its answers once, the longest first, and counts them', () => {
    const border = {
      calculator: 'patch-size',
      savedAt: 1,
      ownInput: {
        unit: {
          unit: 'butted-border',
          topWidth: inches(30),
          topLength: inches(36),
          border: inches(4),
          corners: 'cornerstones',
        },
      },
    };
    const lines = linesOf('piecing', { answers: [border] });
    // Finished 36 and 30 in with a seam of 1/4 in on both ends (derived).
    expect(lines[1]).toBe('From “Second fabric”, cut 2 patches of 36½ × 4½ in, 2 patches of 30½ × 4½ in.');
    expect(lines).toContain('Count them: 8 patches in all. Label each stack.');
  });

  it('writes the names of fabrics as they are, braces and all', () => {
    const typed = JSON.stringify(top.fromProject(skirt)).replaceAll('Dark', '{Dark}');
    const answers = [{ calculator: 'top', savedAt: 1, ownInput: JSON.parse(typed) as unknown }];
    expect(linesOf('piecing', { answers })[1]).toMatch(/^From “{Dark}”, cut \d+ patches of /);
  });

  it('leaves single patches out beside the whole top, as the cutting plan does', () => {
    const both = linesOf('piecing', { answers: saved('patch-size', 'top') });
    expect(both).toEqual(linesOf('piecing', { answers: saved('top') }));
  });

  it('says what is missing while no sizes are saved', () => {
    expect(linesOf('piecing')[0]).toBe(
      'Save the sizes of your patches with this stage, and the cuts are listed here.',
    );
  });

  // Common practice: three strips 1 1/2 in wide, sewn with 1/4 in, measure 3 1/2 in; the middle one is 1 in.
  it('tests the seam on three strips', () => {
    expect(linesOf('piecing').join('\n')).toContain(
      'sew three strips 1½ in wide side by side with a seam of ¼ in, and press. The three measure 3½ in across, the middle one 1 in.',
    );
  });

  it('leaves the test out where the seam takes the whole strip', () => {
    const settings = { ...skirt.settings, seamAllowance: inches(1) };
    expect(linesOf('piecing', { measurements: { ...skirt, settings } }).join()).not.toContain('three strips');
  });

  // Common practice: 1/8 in from the edge for a seam of 1/4 in.
  it('stay-stitches within the seam allowance', () => {
    expect(linesOf('piecing').at(-1)).toContain('⅛ in from its edge');
  });
});

describe('packing for the longarm', () => {
  it('has backing and batting as their calculators give them, and says where the hole comes', () => {
    const lines = linesOf('longarm').join('\n');
    // 50 in and 4 in more on every side (the starting overhang); the diagonal is 58 · √2 = 82.02 in (derived).
    expect(lines).toContain(
      'Square the backing to at least 58 × 58 in. It is square when both diagonals are alike, about 82 in.',
    );
    expect(lines).toContain('Cut the batting to at least 58 × 58 in');
    expect(lines).toContain(
      'the hole of 6 in is cut later: its middle is about 25 in from the sides and 25 in from top and bottom. Draw the slit too, about 22 in long',
    );
  });

  it('follows what the maker chose in the backing', () => {
    const answers = [{ calculator: 'backing', savedAt: 1, ownInput: { overhang: inches(6) } }];
    expect(linesOf('longarm', { answers }).join()).toContain('at least 62 × 62 in');
  });

  it('says nothing of a hole where there is none', () => {
    const plain = { ...skirt, hole: null, hasSlit: false };
    expect(linesOf('longarm', { measurements: plain }).join()).not.toContain('hole');
  });
});

describe('the center cut', () => {
  it('draws the cut and the seam line from the facts of the project', () => {
    const lines = linesOf('center-cut', { before: ['outer-binding'] }).join('\n');
    expect(lines).toContain('a circle 6 in across, 3 in from the center all around');
    expect(lines).toContain('¼ in outside it, 3¼ in from the center');
    expect(lines).toContain('Draw the slit, about 22 in long');
    expect(lines).not.toContain('Trim the outer edge');
  });

  it('never lets the radius of the cut grow by rounding', () => {
    fc.assert(
      fc.property(fc.integer({ min: 20_000, max: 90_000 }), (diameter) => {
        const measurements = { ...skirt, hole: { diameter: diameter as never } };
        const radius = groupsOf('center-cut', { measurements })
          .flatMap(({ steps }) => steps)
          .find(({ says }) => says.startsWith('Draw the cut line'))?.values['radius'];
        expect(radius).toMatchObject({ exact: diameter / 2, rounding: 'down' });
      }),
    );
  });

  it('trims the edge in the same stage where it is bound afterward', () => {
    expect(linesOf('center-cut').join('\n')).toContain(
      'Trim the outer edge: a circle 50 in across, 25 in from the center',
    );
    expect(linesOf('center-cut', { measurements: SAMPLE_MEASUREMENTS })[0]).toMatch(
      /^Trim the edge with a ruler/,
    );
  });

  it('marks the center where it was measured', () => {
    const lines = linesOf('center-cut', { answers: saved('center-find'), before: ['outer-binding'] });
    expect(lines[0]).toMatch(/^Mark the center\. .+: .+ in\. .+: .+ in\.$/);
  });

  it('after the binding is only a cut beside it', () => {
    const lines = linesOf('center-cut', { before: ['inner-binding'] });
    expect(lines[1]).toBe('Unfold the project and cut along the drawn line, ¼ in inside the stitching.');
    expect(lines.join()).not.toContain('tay-stitch');
  });

  it('waits for the size of the hole', () => {
    expect(linesOf('center-cut', { measurements: { ...skirt, hole: null, hasSlit: false } })).toEqual([
      'Decide the size of the hole first. Its numbers are here then.',
    ]);
  });
});

describe('the bindings and the hand finish', () => {
  it('say that a hole bound before the cut is not cut yet', () => {
    expect(linesOf('inner-binding')[0]).toContain('the cut comes later');
    expect(linesOf('inner-binding', { before: ['center-cut'] })[0]).toBe(
      'The hole is cut already: leave out the steps that draw and cut it.',
    );
  });

  it('go around the slit and the hole where the stages bind all of it in one', () => {
    const inOne = linesOf('outer-binding', { measurements: { ...skirt, isHoleBoundAlone: false } }).join();
    expect(inOne).toContain('Go down the slit, around the hole and up the slit again.');
    expect(linesOf('outer-binding').join()).not.toContain('around the hole');
  });

  it('have the lengths and the time of the calculator, with the maker’s own thread', () => {
    const answers = [{ calculator: 'hand-finish', savedAt: 1, ownInput: { threadLength: inches(24) } }];
    const lines = linesOf('hand-finish', { answers });
    expect(lines[0]).toMatch(/^Thread the needle with 24 in\. It takes about \d+ lengths of that\.$/);
    // Both sides of a slit of 22 in (derived).
    expect(lines).toContain('Both sides of the slit: about 44 in.');
  });

  it('at home, leave the overhang of the backing around the top', () => {
    expect(linesOf('home-quilting').join('\n')).toContain('4 in of backing and batting shows on every side');
  });
});
