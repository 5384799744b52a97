import type { Fabric } from '#core/domain/stash';
import { photoAddress } from '#renderer/bridge/photo';
import { classes } from '#renderer/ui/base/classes';
import styles from './stash.module.css';

interface FabricSampleProps {
  readonly fabric: Pick<Fabric, 'name' | 'swatch' | 'photoId'>;
  readonly isLarge?: boolean;
}

/** The fabric as it looks: its photo, or else its color. */
export function FabricSample({ fabric, isLarge = false }: FabricSampleProps) {
  const shared = classes(styles['sample'], isLarge && styles['large']);
  if (fabric.photoId === null) return <span className={shared} style={{ background: fabric.swatch }} />;
  return (
    <img
      className={shared}
      src={photoAddress(fabric.photoId, isLarge ? 'full' : 'thumbnail')}
      alt={isLarge ? `Photo of ${fabric.name}` : ''}
      loading="lazy"
      style={{ background: fabric.swatch }}
    />
  );
}
