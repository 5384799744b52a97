import { describe, expect, it } from 'vitest';
import { answerCalculator } from '#core/calculators/complete-input';
import { calculatorByName } from '#core/calculators/registry';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';
import answers from '#test/fixtures/written-answers.json';
import bindings from '#test/fixtures/written-bindings.json';
import finishes from '#test/fixtures/written-finishes.json';
import patches from '#test/fixtures/written-patches.json';
import rings from '#test/fixtures/written-rings.json';
import tops from '#test/fixtures/written-tops.json';
import { writtenAnswer, writtenFabric } from '#test/helpers/written-answer';

/** Whole answers as a maker reads them; every number in the fixtures has been checked by hand against its formula. */
describe.each([...answers, ...bindings, ...finishes, ...patches, ...rings, ...tops])(
  '$calculator: $what',
  ({ calculator: name, own, written, fabric }) => {
    it('shows figures, steps with the numbers put in, tables, notes and drawing as worked out by hand', () => {
      const calculator = calculatorByName(name)!;
      const answer = answerCalculator(calculator, SAMPLE_MEASUREMENTS, own);
      expect(answer.ok && writtenAnswer(answer.value.calculation)).toEqual(written);
    });

    it('buys and cuts what follows from that', () => {
      const calculator = calculatorByName(name)!;
      const answer = answerCalculator(calculator, SAMPLE_MEASUREMENTS, own);
      if (!answer.ok) throw new Error(JSON.stringify(answer.error));
      const { input, calculation } = answer.value;
      expect(writtenFabric(calculator, input, calculation)).toEqual(fabric);
    });
  },
);
