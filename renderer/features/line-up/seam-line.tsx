import { useState } from 'react';
import { classes } from '#renderer/ui/base/classes';
import { useWidth } from '#renderer/ui/base/use-width';
import { HaloText } from '#renderer/ui/drawings/halo-text';
import { StageStitches } from '#renderer/ui/drawings/progress-stitches';
import { Needle } from './needle';
import { FINISH_WIDTH, gapDatePosition, lineMeasure, type Stop } from './stage-line';
import { stopName } from './stop-words';
import styles from './line-up.module.css';

interface SeamLineProps {
  readonly label: string;
  readonly valueWords: string;
  readonly stops: readonly Stop[];
  readonly stop: number;
  /** Written at the gap of a stage that is at the quilter. */
  readonly awayWords: string | null;
  readonly isBusy: boolean;
  readonly onMove: (stop: number) => void;
}

/** In CSS pixels. */
const THREAD = 3.5;
const LINE_HEIGHT = 28;
const GAP = 9;

/** A project's stages as stitches along a line, their names below, and the needle at the stage it is at. */
export function SeamLine({ label, valueWords, stops, stop, awayWords, isBusy, onMove }: SeamLineProps) {
  const [frame, width] = useWidth<HTMLDivElement>(480);
  const [aimedAt, setAimedAt] = useState<number | null>(null);
  const stages = stops.filter((one) => one !== null);
  const measure = lineMeasure(width, stages.length);
  const dateAt = gapDatePosition(measure, stop);
  return (
    <div ref={frame} className={styles['seam']}>
      <div className={styles['line']}>
        <svg width={width} height={LINE_HEIGHT} className={styles['stitches']} aria-hidden>
          {stages.map((stage, index) => (
            <StageStitches
              key={stage.id}
              run={partOfLine(index, measure.stageWidth)}
              state={stage.state}
              thread={THREAD}
              awayWords={null}
            />
          ))}
          {awayWords !== null && dateAt !== null && (
            <HaloText at={{ x: dateAt, y: LINE_HEIGHT / 2 }} text={awayWords} />
          )}
          <circle
            cx={stages.length * measure.stageWidth + GAP / 2}
            cy={LINE_HEIGHT / 2}
            r={THREAD * 1.2}
            className={classes(styles['end'], stop === stages.length && styles['endReached'])}
          />
        </svg>
        <Needle
          label={label}
          valueWords={valueWords}
          stops={stops}
          stop={stop}
          measure={measure}
          isBusy={isBusy}
          onMove={onMove}
          onAim={setAimedAt}
        />
      </div>
      <div
        className={styles['names']}
        style={{ '--stages': Math.max(1, stages.length), '--finish': `${String(FINISH_WIDTH)}px` }}
        aria-hidden
      >
        {stops.map((one, index) => (
          <span
            key={one?.id ?? 'finish'}
            title={stopName(one)}
            className={classes(styles['stageName'], index === (aimedAt ?? stop) && styles['lit'])}
          >
            {stopName(one)}
          </span>
        ))}
      </div>
    </div>
  );
}

function partOfLine(index: number, stageWidth: number) {
  const y = LINE_HEIGHT / 2;
  const from = index * stageWidth + GAP / 2;
  return [
    { x: from, y },
    { x: Math.max(from, (index + 1) * stageWidth - GAP / 2), y },
  ];
}
