import type { Fabric } from '#core/domain/stash';
import { photoAddress } from '#renderer/bridge/photo';
import { classes } from '#renderer/ui/base/classes';
import styles from './fabric-sample.module.css';

interface FabricSampleProps {
  readonly fabric: Pick<Fabric, 'name' | 'swatch' | 'photoId'>;
  /** small: beside a line of text; square: as wide as its card; large: the photo of a fabric's own page. */
  readonly size?: 'small' | 'square' | 'large';
}

/** Shows a fabric: its photo, or else its color. */
export function FabricSample({ fabric, size = 'small' }: FabricSampleProps) {
  const look = classes(styles['sample'], size !== 'small' && styles[size]);
  if (fabric.photoId === null) return <span className={look} style={{ background: fabric.swatch }} />;
  const isLarge = size === 'large';
  return (
    <img
      className={look}
      src={photoAddress(fabric.photoId, isLarge ? 'full' : 'thumbnail')}
      alt={isLarge ? `Photo of ${fabric.name}` : ''}
      loading="lazy"
      style={{ background: fabric.swatch }}
    />
  );
}
