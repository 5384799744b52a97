import { useId } from 'react';
import type { OutlineShape } from '#core/domain/outline';
import { lengthFromInches } from '#core/units/length';
import { SHAPE_WORDS } from '#renderer/text/project-words';
import { Button } from '#renderer/ui/page/button';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { Choice } from '#renderer/ui/fields/choice';
import { FieldProblemLine } from '#renderer/ui/fields/field';
import { LengthField } from '#renderer/ui/fields/length-field';
import { ProjectDrawing } from '#renderer/ui/drawings/project-drawing';
import {
  cornerProblem,
  EMPTY_DRAFT,
  holeProblem,
  previewOutline,
  type ProjectDraft,
  sidesProblem,
} from './project-draft';
import styles from './project-form.module.css';

interface ShapeFieldsProps {
  readonly draft: ProjectDraft;
  readonly onChange: (changed: Partial<ProjectDraft>) => void;
}

const SHAPES: readonly OutlineShape[] = [
  'circle',
  'square',
  'rectangle',
  'rounded',
  'octagon',
  'hexagon',
  'ellipse',
  'sides',
];
const MAXIMUM_SIDES = 60;
const MAXIMUM_SIZE = lengthFromInches(390);
const MINIMUM_SIZE = lengthFromInches(1 / 64);
const limits = { minimum: MINIMUM_SIZE, maximum: MAXIMUM_SIZE };

/** The fields for shape, size, hole and slit. */
export function ShapeFields({ draft, onChange }: ShapeFieldsProps) {
  return (
    <section className={styles['part']}>
      <Choice
        label="Shape"
        value={draft.shape}
        options={SHAPES.map((value) => ({
          value,
          words: SHAPE_WORDS[value],
          picture: <ShapePicture shape={value} />,
        }))}
        onChange={(shape) => onChange({ shape })}
      />
      <SizeFields draft={draft} onChange={onChange} />
      <Checkbox
        label="It has a hole in the middle"
        isChecked={draft.hasHole}
        onChange={(hasHole) => onChange({ hasHole })}
      />
      {draft.hasHole && (
        <div className={styles['pair']}>
          <LengthField
            label="Hole across"
            help="From cut edge to cut edge, before it is bound."
            value={draft.holeDiameter}
            problem={holeProblem(draft)}
            {...limits}
            onCommit={(holeDiameter) => onChange({ holeDiameter })}
          />
          <div className={styles['besideField']}>
            <Checkbox
              label="A slit runs from the edge to the hole"
              isChecked={draft.hasSlit}
              onChange={(hasSlit) => onChange({ hasSlit })}
            />
          </div>
        </div>
      )}
    </section>
  );
}

const ACROSS_WORDS: Readonly<Partial<Record<OutlineShape, string>>> = { square: 'Side', circle: 'Across' };

function SizeFields({ draft, onChange }: ShapeFieldsProps) {
  switch (draft.shape) {
    case 'square':
    case 'circle':
    case 'hexagon':
    case 'octagon':
      return (
        <LengthField
          label={ACROSS_WORDS[draft.shape] ?? 'Across the flats'}
          help="Finished, edge to edge. Write 48, 48 1/2 in or 120 cm."
          value={draft.across}
          {...limits}
          onCommit={(across) => onChange({ across })}
        />
      );
    case 'rectangle':
    case 'ellipse':
      return <WidthAndLength draft={draft} onChange={onChange} />;
    case 'rounded':
      return (
        <>
          <WidthAndLength draft={draft} onChange={onChange} />
          <LengthField
            label="Radius of the corners"
            help="Of the round you draw at each corner: half the width of the plate."
            value={draft.cornerRadius}
            problem={cornerProblem(draft)}
            {...limits}
            onCommit={(cornerRadius) => onChange({ cornerRadius })}
          />
        </>
      );
    case 'sides':
      return (
        <>
          <WidthAndLength draft={draft} onChange={onChange} />
          <SideList draft={draft} onChange={onChange} />
        </>
      );
  }
}

function WidthAndLength({ draft, onChange }: ShapeFieldsProps) {
  return (
    <div className={styles['pair']}>
      <LengthField
        label="Width"
        help="Finished, at its widest."
        value={draft.width}
        {...limits}
        onCommit={(width) => onChange({ width })}
      />
      <LengthField
        label="Length"
        help="Finished, at its longest."
        value={draft.length}
        {...limits}
        onCommit={(length) => onChange({ length })}
      />
    </div>
  );
}

function SideList({ draft, onChange }: ShapeFieldsProps) {
  const { sides } = draft;
  const problem = sidesProblem(draft);
  const problemId = useId();
  return (
    <fieldset aria-describedby={problem === null ? undefined : problemId}>
      <legend className={styles['legend']}>Sides, in order around the edge</legend>
      <div className={styles['sideList']}>
        {sides.map((side, index) => (
          <LengthField
            key={index}
            label={`Side ${String(index + 1)}`}
            value={side}
            {...limits}
            onCommit={(next) =>
              onChange({ sides: sides.map((one, place) => (place === index ? next : one)) })
            }
          />
        ))}
      </div>
      <div className={styles['sideButtons']}>
        <Button
          isSmall
          disabled={sides.length >= MAXIMUM_SIDES}
          onClick={() => onChange({ sides: [...sides, null] })}
        >
          Add a side
        </Button>
        <Button
          look="quiet"
          isSmall
          disabled={sides.length <= 3}
          onClick={() => onChange({ sides: sides.slice(0, -1) })}
        >
          Delete the last side
        </Button>
      </div>
      <FieldProblemLine id={problemId} problem={problem} />
    </fieldset>
  );
}

const IRREGULAR = [52, 30, 38, 24, 44].map(lengthFromInches);

function ShapePicture({ shape }: { readonly shape: OutlineShape }) {
  const draft: ProjectDraft = { ...EMPTY_DRAFT, shape, sides: IRREGULAR };
  return (
    <ProjectDrawing
      project={{ outline: previewOutline(draft), hole: null, hasSlit: false }}
      size={26}
      isSilent
    />
  );
}
