import { DraftPlaceContext } from '../base/draft';
import { useMemo } from 'react';
import type { z } from 'zod';
import { choiceWords } from '#renderer/text/choice-words';
import { Checkbox } from '../fields/checkbox';
import { Choice, Select } from '../fields/choice';
import { classes } from '../base/classes';
import { describeSchema, type FieldDescription, type NamedField } from '#core/domain/describe-schema';
import { LeafField } from './schema-leaf';
import { SchemaRows } from './schema-rows';
import {
  asObject,
  type FieldPath,
  type PathProblem,
  problemAt,
  startingValue,
  startingVariant,
  type SchemaFieldProps,
} from './schema-values';
import layout from '../page/layout.module.css';
import styles from './schema-form.module.css';

interface SchemaFormProps {
  /** A zod object whose fields have their words (`domain/fields`). */
  readonly schema: z.core.$ZodType;
  readonly value: object;
  readonly onChange: (value: Readonly<Record<string, unknown>>) => void;
  readonly problems?: readonly PathProblem[];
  /** The values used for optional fields that are left empty, shown in them as placeholders. */
  readonly fallbacks?: object;
  /** Draws only these top-level fields, in this order. */
  readonly only?: readonly string[];
}

/** Draws a form for any schema made of `domain/fields`. `onChange` gets the whole value after every change of a field. */
export function SchemaForm({ schema, value, onChange, problems = [], fallbacks, only }: SchemaFormProps) {
  const field = useMemo(() => describeSchema(schema), [schema]);
  if (field.form !== 'group') throw new RangeError('A form is drawn for an object');
  const shown =
    only === undefined ? field.fields : only.flatMap((key) => field.fields.filter((one) => one.key === key));
  const seldom = shown.filter((one) => one.field.isSeldom);
  const drawn = { value: asObject(value), path: [], problems, fallbacks: asObject(fallbacks), onChange };
  const isNeeded = problems.some(({ path }) => seldom.some(({ key }) => key === path[0]));
  return (
    <>
      <Fields {...drawn} fields={shown.filter((one) => !one.field.isSeldom)} />
      {seldom.length > 0 && (
        <details className={classes(layout['fold'], styles['seldom'])} open={isNeeded}>
          <summary>Rarely changed</summary>
          <Fields {...drawn} fields={seldom} />
        </details>
      )}
    </>
  );
}

interface FieldsProps {
  readonly fields: readonly NamedField[];
  readonly value: Readonly<Record<string, unknown>>;
  readonly path: FieldPath;
  readonly problems: readonly PathProblem[];
  readonly fallbacks?: Readonly<Record<string, unknown>>;
  readonly onChange: (value: Readonly<Record<string, unknown>>) => void;
}

function Fields({ fields, value, path, problems, fallbacks = {}, onChange }: FieldsProps) {
  const change = (key: string, next: unknown) => {
    const { [key]: _before, ...others } = value;
    onChange(next === undefined ? others : { ...others, [key]: next });
  };
  return (
    <div className={styles['fields']}>
      {fields.map(({ key, field }) => (
        <div key={key} className={classes(isWide(field) && styles['wide'])}>
          <SchemaField
            field={field}
            value={value[key]}
            path={[...path, key]}
            problems={problems}
            fallback={fallbacks[key]}
            onChange={(next) => change(key, next)}
          />
        </div>
      ))}
    </div>
  );
}

/** One field of any kind. */
function SchemaField(props: SchemaFieldProps) {
  const { field, value, path, problems, onChange } = props;
  if (field.form === 'group' || field.form === 'one-of' || field.form === 'rows') {
    if (field.isOptional) return <OptionalPart {...props} />;
  }
  if (field.form === 'group') {
    return (
      <fieldset className={styles['group']}>
        {field.title !== '' && <legend className={styles['legend']}>{field.title}</legend>}
        <Fields
          fields={field.fields}
          value={asObject(value)}
          path={path}
          problems={problems}
          onChange={onChange}
        />
      </fieldset>
    );
  }
  if (field.form === 'one-of') return <OneOf {...props} field={field} />;
  if (field.form === 'rows')
    return <SchemaRows {...props} field={field} drawField={(row) => <SchemaField {...row} />} />;
  return (
    <DraftPlaceContext value={path.join('/')}>
      <LeafField
        field={field}
        value={value}
        fallback={props.fallback}
        problem={problemAt(problems, path)}
        onChange={onChange}
      />
    </DraftPlaceContext>
  );
}

/** A group that can be missing, such as a hole: a checkbox adds it. */
function OptionalPart({ field, value, path, problems, onChange }: SchemaFieldProps) {
  const isThere = value !== null && value !== undefined;
  const required: FieldDescription = { ...field, isOptional: false, title: '' };
  const empty = field.empty === 'null' ? null : undefined;
  return (
    <div className={styles['optional']}>
      <Checkbox
        label={field.title}
        help={field.help}
        isChecked={isThere}
        problem={problemAt(problems, path)}
        onChange={(isWanted) => onChange(isWanted ? startingValue(required) : empty)}
      />
      {isThere && (
        <SchemaField field={required} value={value} path={path} problems={problems} onChange={onChange} />
      )}
    </div>
  );
}

function OneOf({
  field,
  value,
  path,
  problems,
  onChange,
}: SchemaFieldProps & { readonly field: Extract<FieldDescription, { form: 'one-of' }> }) {
  const current = asObject(value);
  const chosen = field.variants.find((variant) => variant.value === current[field.key]) ?? field.variants[0];
  if (chosen === undefined) return null;
  const options = field.variants.map((variant) => ({
    value: variant.value,
    words: choiceWords(variant.value),
  }));
  const choose = (next: string) => {
    const variant = field.variants.find((one) => one.value === next);
    if (variant !== undefined) onChange(startingVariant(field.key, variant, current));
  };
  const Chooser = options.length > 4 ? Select : Choice;
  return (
    <div className={styles['group']}>
      <Chooser
        label={field.title === '' ? choiceWords(field.key) : field.title}
        help={field.help}
        value={chosen.value}
        options={options}
        problem={problemAt(problems, [...path, field.key])}
        onChange={choose}
      />
      <Fields fields={chosen.fields} value={current} path={path} problems={problems} onChange={onChange} />
    </div>
  );
}

function isWide(field: FieldDescription): boolean {
  return field.form === 'group' || field.form === 'rows' || field.form === 'one-of';
}
