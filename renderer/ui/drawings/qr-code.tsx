import qrcode from 'qrcode-generator';
import { useMemo } from 'react';

interface QrCodeProps {
  /** Digits and capital letters, which need the least room. */
  readonly text: string;
}

/** Light modules kept on every side, as ISO/IEC 18004 asks. */
const QUIET_ZONE = 4;

/** A QR code with the highest error correction, so that a creased or stained label can still be read. It fills its container. */
export function QrCode({ text }: QrCodeProps) {
  const { path, size } = useMemo(() => drawn(text), [text]);
  return (
    <svg viewBox={`0 0 ${String(size)} ${String(size)}`} role="img" aria-label={`QR code of ${text}`}>
      <rect width={size} height={size} fill="#ffffff" />
      <path d={path} fill="#000000" shapeRendering="crispEdges" />
    </svg>
  );
}

/** All dark modules as one path. Neighbors in a row are one stretch. */
function drawn(text: string): { readonly path: string; readonly size: number } {
  const code = qrcode(0, 'H');
  code.addData(text, 'Alphanumeric');
  code.make();
  const count = code.getModuleCount();
  let path = '';
  for (let row = 0; row < count; row += 1) {
    for (let column = 0; column < count; column += 1) {
      if (!code.isDark(row, column)) continue;
      const from = column;
      while (column + 1 < count && code.isDark(row, column + 1)) column += 1;
      const length = String(column - from + 1);
      path += `M${String(from + QUIET_ZONE)} ${String(row + QUIET_ZONE)}h${length}v1h-${length}z`;
    }
  }
  return { path, size: count + 2 * QUIET_ZONE };
}
