import type { z } from 'zod';
import { countField } from '#core/domain/fields';
import { lengthFromInches } from '#core/units/length';
import { rectangleAt } from '../cut-shapes';
import { type Computed, type FabricRole, type PatchUnit, sizeField, unitSizes } from '../patch-unit';
import { rectanglePatch } from '../rectangle-patch';

export const logCabinSizes = unitSizes(
  'log-cabin',
  'Log cabin',
  {
    center: sizeField('Center'),
    firstStrip: sizeField('First two strips', 'Width of the first two strips of every round.'),
    secondStrip: sizeField('Last two strips', 'Width of the last two strips of every round.'),
    rounds: countField({ title: 'Rounds', help: 'Of four strips each.', minimum: 1, maximum: 12 }),
  },
  {
    center: lengthFromInches(2),
    firstStrip: lengthFromInches(1),
    secondStrip: lengthFromInches(1),
    rounds: 4,
  },
);

type Sizes = Computed<z.infer<typeof logCabinSizes>>;

export const logCabin: PatchUnit<Sizes> = {
  kind: 'log-cabin',
  fabrics: {
    first: 'the center',
    second: 'the first two strips of every round',
    third: 'the last two strips of every round',
  },
  cutMeans: 'the center',
  plan: (sizes, seam) => {
    const logs = logsOf(sizes);
    const side = sizes.center + sizes.rounds * (sizes.firstStrip + sizes.secondStrip);
    const away = sizes.rounds * sizes.secondStrip;
    const center = { name: 'Center', role: 'first', width: sizes.center, length: sizes.center } as const;
    return {
      width: side,
      length: side,
      outline: rectangleAt(0, 0, side, side),
      finishedPatches: [
        { patch: 0, polygon: rectangleAt(away, sizes.rounds * sizes.firstStrip, sizes.center, sizes.center) },
        ...logs.map((log, index) => ({ patch: index + 1, polygon: log.polygon })),
      ],
      patches: [center, ...logs].map(({ name, role, width, length }) =>
        rectanglePatch({ name, role, width, length, seam }),
      ),
    };
  },
  fromCut: (sizes, seam) => {
    const finished = sizes.center - 2 * seam;
    return {
      sizes: {
        ...sizes,
        center: finished,
        firstStrip: sizes.firstStrip - 2 * seam,
        secondStrip: sizes.secondStrip - 2 * seam,
      },
      formula: 'F = C − 2s (for the center and the strips)',
      cut: sizes.center,
      finished,
    };
  },
};

interface Log {
  readonly name: string;
  readonly role: FabricRole;
  readonly width: number;
  readonly length: number;
  readonly polygon: ReturnType<typeof rectangleAt>;
}

/**
 * Each strip is as long as the side it is sewn to. A round goes above, right, below, left; its first two strips are from the second
 * fabric, its last two from the third.
 */
function logsOf({ center, firstStrip: a, secondStrip: b, rounds }: Sizes): readonly Log[] {
  return Array.from({ length: rounds }, (_, before) => {
    const inner = center + before * (a + b);
    const [left, top] = [(rounds - before) * b, (rounds - before) * a];
    const name = (strip: number) => `Round ${String(before + 1)}, strip ${String(strip)}`;
    const first = { role: 'second', width: a } as const;
    const last = { role: 'third', width: b } as const;
    const [wide, tall] = [inner + a, inner + a + b];
    return [
      { ...first, name: name(1), length: inner, polygon: rectangleAt(left, top - a, inner, a) },
      { ...first, name: name(2), length: wide, polygon: rectangleAt(left + inner, top - a, a, wide) },
      { ...last, name: name(3), length: wide, polygon: rectangleAt(left, top + inner, wide, b) },
      { ...last, name: name(4), length: tall, polygon: rectangleAt(left - b, top - a, b, tall) },
    ];
  }).flat();
}
