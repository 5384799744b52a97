import 'react';

declare module 'react' {
  /** Styles may hand numbers to their sheet as custom properties. */
  // eslint-disable-next-line @typescript-eslint/consistent-indexed-object-style
  interface CSSProperties {
    [variable: `--${string}`]: string | number | undefined;
  }
}
