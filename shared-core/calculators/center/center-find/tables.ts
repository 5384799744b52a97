import { pointDistance } from '#core/geometry/point';
import type { Quantity, Table } from '#core/calculators/explanation';
import { fineLength, givenLength, lengthNearest, wordsQuantity } from '#core/calculators/quantities';
import type { Found } from './found';

/** The distance of the center from every named point. */
export function arcsTable({ arcs }: Found): Table {
  return {
    title: 'Arcs to chalk: they cross at the center',
    columns: ['From', 'Distance'],
    rows: arcs.map(({ from, distance }): readonly Quantity[] => [
      wordsQuantity(from),
      lengthNearest(distance),
    ]),
  };
}

/** Nothing where only one way leads to the center. */
export function centersTables({ centers }: Found): readonly Table[] {
  const [best, ...others] = centers;
  if (best === undefined || others.length === 0) return [];
  return [
    {
      title: 'Centers found by different methods',
      columns: ['Method', 'To the right', 'Down', 'Distance'],
      rows: centers.map(({ name, point }): readonly Quantity[] => [
        wordsQuantity(name),
        fineLength(point.x - best.point.x, 'nearest'),
        fineLength(point.y - best.point.y, 'nearest'),
        fineLength(pointDistance(point, best.point), 'nearest'),
      ]),
    },
  ];
}

export function fitTable({ lengths, fitted, closure }: Found): Table {
  return {
    title: 'Your lengths, and the nearest lengths that fit together',
    columns: ['Length', 'Measured', 'Fitted', 'Changed by', 'If only this one is wrong, it is'],
    rows: lengths.map(({ words, measured }, index): readonly Quantity[] => {
      const fits = fitted[index] ?? measured;
      const sole = closure.soleChanges.find((change) => change.index === index);
      return [
        wordsQuantity(words),
        givenLength(measured, 'fine'),
        fineLength(fits, 'nearest'),
        fineLength(fits - measured, 'nearest'),
        sole === undefined ? wordsQuantity('not possible') : fineLength(sole.fits, 'nearest'),
      ];
    }),
  };
}
