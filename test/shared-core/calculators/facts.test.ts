import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { factFields, trialsIn } from '#core/calculators/fact-fields';
import { calculatorByName, calculators } from '#core/calculators/registry';
import { unsettledFacts } from '#core/calculators/unsettled';
import type { CalculationId, StageId } from '#core/domain/ids';
import type { Measurements } from '#core/domain/measurements';
import { decideFacts, factsOfProject, measurementsOfFacts } from '#core/domain/project-facts';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFromInches as inches } from '#core/units/length';
import { glance } from '#test/helpers/glances';
import { anyMeasurements } from '#test/helpers/measurements';

const round: Measurements = {
  outline: { shape: 'circle', diameter: inches(60) },
  hole: { diameter: inches(6) },
  hasSlit: false,
  settings: STARTING_SETTINGS,
};

function calculator(name: string) {
  const found = calculatorByName(name);
  if (found === undefined) throw new Error(`There is no calculator ${name}`);
  return found;
}

const saved = (name: string, ownInput: object) => ({
  id: 'answer' as CalculationId,
  stageId: 'stage' as StageId,
  calculator: name,
  ownInput,
});

describe('the facts a calculator takes from its project', () => {
  it('are found for the binding of an edge, each once', () => {
    expect(Object.fromEntries(factFields(calculator('outer-binding'), round))).toMatchObject({
      outline: 'outline',
      hole: 'hole',
      hasSlit: 'hasSlit',
      seamAllowance: 'seamAllowance',
      fabricWidth: 'fabricWidth',
      stripWidth: 'bindingStripWidth',
      overlap: 'bindingOverlap',
      quiltThickness: 'quiltThickness',
    });
  });

  it('hold the hole also where a field has its diameter alone', () => {
    expect(factFields(calculator('inner-binding'), round).get('holeDiameter')).toBe('hole');
    expect(factFields(calculator('inner-binding'), { ...round, hole: null }).get('holeDiameter')).toBe(
      'hole',
    );
  });

  it('leave out the hole where the calculator decides it, and the width of a piece at hand', () => {
    expect([...factFields(calculator('hole-size'), round).values()]).not.toContain('hole');
    expect(factFields(calculator('bias-strips'), round).has('pieceWidth')).toBe(false);
  });

  it('are the same for every project, and the project’s own values are no trial', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...calculators.map(({ name }) => name)),
        anyMeasurements,
        (name, measurements) => {
          const one = calculator(name);
          const fields = factFields(one, measurements);
          const own = Object.fromEntries(Object.entries(one.fromProject(measurements)));
          expect(trialsIn(one, measurements, own)).toEqual([]);
          for (const [field, fact] of fields) expect([field, fact]).toEqual([field, expect.any(String)]);
        },
      ),
    );
  });

  it('give the same measurements back', () => {
    fc.assert(
      fc.property(anyMeasurements, (measurements) => {
        expect(measurementsOfFacts(factsOfProject(measurements))).toEqual(measurements);
      }),
    );
  });
});

describe('a fact changed in a calculator', () => {
  it('is a trial until the project has it', () => {
    const own = { seamAllowance: inches(3 / 8), holeDiameter: inches(14) };
    const trials = trialsIn(calculator('inner-binding'), round, own);
    expect(trials).toEqual([
      { field: 'holeDiameter', fact: 'hole', tried: { hole: { diameter: inches(14) } } },
      { field: 'seamAllowance', fact: 'seamAllowance', tried: { seamAllowance: inches(3 / 8) } },
    ]);
    const decided = { ...round, hole: { diameter: inches(14) } };
    expect(trialsIn(calculator('inner-binding'), decided, own)).toHaveLength(1);
  });

  it('that the project cannot have is no trial', () => {
    expect(trialsIn(calculator('inner-binding'), round, { seamAllowance: inches(40) })).toEqual([]);
  });
});

describe('what is not settled between a project and its saved answers', () => {
  it('is a hole that was worked out and not used', () => {
    const answer = saved('hole-size', { from: 'wish', measure: inches(14) });
    const [open, ...others] = unsettledFacts([answer], round);
    expect(others).toEqual([]);
    expect(open).toMatchObject({
      calculator: 'hole-size',
      fact: 'hole',
      answer: { hole: { diameter: inches(14) } },
    });
    expect(unsettledFacts([answer], { ...round, hole: { diameter: inches(14) } })).toEqual([]);
  });

  it('is nothing where an answer takes the project’s numbers, whatever they are now', () => {
    const answers = calculators.map(({ name }) => saved(name, {}));
    expect(unsettledFacts(answers, round)).toEqual([]);
    expect(unsettledFacts(answers, { ...round, hole: { diameter: inches(9) } })).toEqual([]);
  });

  it('is nothing for an answer of a calculator that is no longer there', () => {
    expect(unsettledFacts([saved('no-such-thing', {})], round)).toEqual([]);
  });
});

describe('facts decided for a project', () => {
  const { project } = glance({ stages: ['planned'] });

  it('replace its own and leave the rest', () => {
    const after = decideFacts(project, { hole: { diameter: inches(14) }, seamAllowance: inches(3 / 8) });
    expect(after).toMatchObject({
      name: project.name,
      outline: project.outline,
      hole: { diameter: inches(14) },
      settingChanges: { ...project.settingChanges, seamAllowance: inches(3 / 8) },
    });
  });

  it('take the slit away with the hole', () => {
    const withSlit = { ...project, hole: { diameter: inches(6) }, hasSlit: true };
    expect(decideFacts(withSlit, { hole: null })).toMatchObject({ hole: null, hasSlit: false });
    expect(decideFacts({ ...project, hole: null }, { hasSlit: true }).hasSlit).toBe(false);
  });
});
