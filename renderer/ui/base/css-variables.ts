import 'react';

declare module 'react' {
  /** A `style` prop may set custom properties. */
  // eslint-disable-next-line @typescript-eslint/consistent-indexed-object-style
  interface CSSProperties {
    [variable: `--${string}`]: string | number | undefined;
  }
}
