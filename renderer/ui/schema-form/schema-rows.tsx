import type { ReactNode } from 'react';
import { Button } from '../page/button';
import type { FieldDescription } from '#core/domain/describe-schema';
import { FieldProblemLine } from '../fields/field';
import { asRows, problemAt, type SchemaFieldProps, startingValue } from './schema-values';
import styles from './schema-form.module.css';

interface SchemaRowsProps extends SchemaFieldProps {
  readonly field: Extract<FieldDescription, { form: 'rows' }>;
  readonly drawField: (row: SchemaFieldProps) => ReactNode;
}

/** A list of rows. A new row starts as a copy of the last, since rows are usually alike. */
export function SchemaRows({ field, value, path, problems, onChange, drawField }: SchemaRowsProps) {
  const rows = asRows(value);
  const problem = problemAt(problems, path);
  const add = () => onChange([...rows, rows.at(-1) ?? startingValue(field.row)]);
  const id = `rows-${path.join('-')}`;
  return (
    <fieldset className={styles['group']} aria-describedby={problem === null ? undefined : id}>
      <legend className={styles['legend']}>{field.title}</legend>
      <ol className={styles['rows']}>
        {rows.map((row, index) => (
          <li key={index} className={styles['row']}>
            {drawField({
              field: titledRow(field.row, index),
              value: row,
              path: [...path, index],
              problems,
              onChange: (next) => onChange(rows.map((one, place) => (place === index ? next : one))),
            })}
            <Button
              look="quiet"
              isSmall
              disabled={rows.length <= field.minimum}
              aria-label={`Remove ${rowName(field, index)}`}
              onClick={() => onChange(rows.filter((_, place) => place !== index))}
            >
              Remove
            </Button>
          </li>
        ))}
      </ol>
      <div>
        <Button isSmall disabled={rows.length >= field.maximum} onClick={add}>
          Add {rowName(field, rows.length).toLowerCase()}
        </Button>
      </div>
      <FieldProblemLine id={id} problem={problem} />
    </fieldset>
  );
}

function titledRow(row: FieldDescription, index: number): FieldDescription {
  return { ...row, title: `${row.title} ${String(index + 1)}`.trim() };
}

function rowName(field: SchemaRowsProps['field'], index: number): string {
  return `${field.row.title === '' ? 'line' : field.row.title} ${String(index + 1)}`;
}
