import { AxisBottom, AxisLeft } from '@visx/axis';
import { scaleBand, scaleLinear } from '@visx/scale';
import { Bar } from '@visx/shape';
import styles from './chart.module.css';

interface Column {
  readonly label: string;
  /** One number for each series, none negative. */
  readonly values: readonly number[];
}

interface ColumnChartProps {
  readonly columns: readonly Column[];
  /** In CSS pixels. */
  readonly width: number;
  /** Writes a number of the scale. The steps of the scale are round numbers of `unit`. */
  readonly format: (value: number) => string;
  /** How much of the columns' numbers is 1 of the written ones, such as 100 for cents written as dollars. */
  readonly unit: number;
}

const HEIGHT = 260;
const TOP = 12;
const BOTTOM = 30;
const LEFT = 76;
const LABEL_WIDTH = 66;
const TICKS = 4;

/** Numbers as columns above their labels. Columns of one label are side by side. */
export function ColumnChart({ columns, width, format, unit }: ColumnChartProps) {
  const highest = Math.max(TICKS, ...columns.flatMap(({ values }) => values.map((value) => value / unit)));
  const across = scaleBand({
    domain: columns.map(({ label }) => label),
    range: [LEFT, width],
    padding: 0.24,
  });
  const up = scaleLinear({ domain: [0, highest], range: [HEIGHT - BOTTOM, TOP], nice: TICKS });
  const step = across.step();
  const every = Math.max(1, Math.ceil(LABEL_WIDTH / Math.max(1, step)));
  const series = columns[0]?.values.length ?? 1;
  const columnWidth = across.bandwidth() / series;
  return (
    <svg className={styles['chart']} width={width} height={HEIGHT} focusable="false">
      {up.ticks(TICKS).map((tick) => (
        <line key={tick} className={styles['grid']} x1={LEFT} x2={width} y1={up(tick)} y2={up(tick)} />
      ))}
      {columns.map(({ label, values }) =>
        values.map((value, index) => (
          <Bar
            key={`${label} ${String(index)}`}
            className={styles[`series${String(index)}`] ?? ''}
            x={(across(label) ?? 0) + index * columnWidth + 1}
            y={up(value / unit)}
            width={Math.max(1, columnWidth - 2)}
            height={up(0) - up(value / unit)}
          />
        )),
      )}
      <AxisLeft
        scale={up}
        left={LEFT}
        numTicks={TICKS}
        hideAxisLine
        hideTicks
        tickFormat={(value) => format(Number(value) * unit)}
        tickClassName={styles['tick'] ?? ''}
        tickLabelProps={{ dx: -4, dy: 4, textAnchor: 'end' }}
      />
      <AxisBottom
        scale={across}
        top={HEIGHT - BOTTOM}
        hideTicks
        axisLineClassName={styles['base'] ?? ''}
        tickValues={columns
          .filter((_column, index) => (columns.length - 1 - index) % every === 0)
          .map(({ label }) => label)}
        tickFormat={String}
        tickClassName={styles['tick'] ?? ''}
        tickLabelProps={{ dy: 4, textAnchor: 'middle' }}
      />
    </svg>
  );
}
