import { render, screen } from '@testing-library/react';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Outline } from '#core/domain/outline';
import type { StageState } from '#core/domain/stage';
import { lengthFromInches } from '#core/units/length';
import { outlineFromTop } from '#core/calculators/outline/outline-measures';
import { splitEdge } from '#renderer/ui/drawings/split-edge';
import { ProjectDrawing } from '#renderer/ui/drawings/project-drawing';

const ring = {
  outline: { shape: 'octagon', acrossFlats: lengthFromInches(54) },
  hole: { diameter: lengthFromInches(6.5) },
  hasSlit: true,
} as const;

const stages = (...states: readonly StageState[]) =>
  states.map((state, index) => ({ id: String(index), name: `Stage ${String(index + 1)}`, state }));

const markOf = (state: StageState) => {
  const { container } = render(
    <ProjectDrawing project={ring} stages={stages(state, 'planned')} size={300} />,
  );
  const bare = render(<ProjectDrawing project={ring} stages={stages('skipped', 'planned')} size={300} />);
  return container.innerHTML === bare.container.innerHTML ? 'bare' : container.innerHTML;
};

describe('the drawing of a project', () => {
  it('describes itself in words', () => {
    render(
      <ProjectDrawing project={ring} stages={stages('done', 'in-hand', 'planned', 'skipped')} size={200} />,
    );
    expect(screen.getByRole('img')).toHaveAccessibleName(
      'Octagon, 54 in across the flats, 6½ in hole, slit. 1 of 3 stages done. Now: Stage 2, in progress. Then: Stage 3.',
    );
  });

  it('is hidden from a screen reader if its words are beside it', () => {
    render(<ProjectDrawing project={ring} size={200} isSilent />);
    expect(screen.queryByRole('img')).toBeNull();
  });

  it('shows every state of a stage in its own shape, not only in its own color', () => {
    const marks = (['done', 'in-hand', 'out', 'planned', 'skipped'] as const).map(markOf);
    expect(new Set(marks).size).toBe(5);
    expect(marks[4]).toBe('bare');
  });

  it('writes the return date at the gap of a stage at the quilter', () => {
    render(
      <ProjectDrawing
        project={ring}
        stages={stages('done', 'out', 'planned')}
        size={300}
        awayWords="12 Sep"
      />,
    );
    expect(screen.getByText('12 Sep', { ignore: '[aria-hidden]' })).toBeInTheDocument();
  });

  it('has its fabrics as rounds, the most used one outermost', () => {
    const { container } = render(
      <ProjectDrawing project={ring} swatches={['#112233', '#445566']} size={200} />,
    );
    const fills = [...container.querySelectorAll('path[fill]')].map((path) => path.getAttribute('fill'));
    expect(fills).toEqual(['#112233', '#445566']);
  });

  it('writes its sizes as dimensions', () => {
    render(
      <ProjectDrawing
        project={{
          outline: { shape: 'rectangle', width: lengthFromInches(14), length: lengthFromInches(42.5) },
          hole: null,
          hasSlit: false,
        }}
        size={400}
        hasDimensions
      />,
    );
    const texts = [...document.querySelectorAll('text:not([aria-hidden])')].map((text) => text.textContent);
    expect(texts).toEqual(['14 in', '42 1/2 in']);
  });
});

const inches = fc.integer({ min: 1, max: 200 }).map(lengthFromInches);
const outlines: fc.Arbitrary<Outline> = fc.oneof(
  inches.map((side) => ({ shape: 'square', side }) as const),
  fc.record({ shape: fc.constant('rectangle' as const), width: inches, length: inches }),
  fc.record({
    shape: fc.constant('rounded' as const),
    width: inches,
    length: inches,
    cornerRadius: inches,
  }),
  inches.map((diameter) => ({ shape: 'circle', diameter }) as const),
  fc.record({ shape: fc.constant('ellipse' as const), width: inches, length: inches }),
  inches.map((acrossFlats) => ({ shape: 'hexagon', acrossFlats }) as const),
  inches.map((acrossFlats) => ({ shape: 'octagon', acrossFlats }) as const),
);

const lengthOf = (points: readonly { readonly x: number; readonly y: number }[]) =>
  points.reduce((sum, point, index) => {
    const before = points[index - 1];
    return before === undefined ? sum : sum + Math.hypot(point.x - before.x, point.y - before.y);
  }, 0);

describe('the edge that progress is sewn along', () => {
  it('is split into equal parts, one for each stage', () => {
    fc.assert(
      fc.property(outlines, fc.integer({ min: 1, max: 12 }), (outline, count) => {
        const points = outlineFromTop(outline);
        const whole = lengthOf([...points, points[0]!]);
        const arcs = splitEdge(points, count, 0).map(lengthOf);
        expect(arcs).toHaveLength(count);
        for (const arc of arcs) expect(arc).toBeCloseTo(whole / count, 3);
      }),
    );
  });
});
