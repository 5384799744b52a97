import { createContext, useContext } from 'react';
import { currencyFromCode, type CurrencyCode } from '#core/units/money';
import type { LengthDisplay } from '#core/units/unit-system';

/** How numbers are written: in the project's units, the workshop's currency and the system's language. */
export interface Display {
  readonly length: LengthDisplay;
  readonly currency: CurrencyCode;
  readonly locale: string;
}

const fallback: Display = {
  length: { system: 'inch', inchStep: 8 },
  currency: currencyFromCode('USD'),
  locale: 'en-US',
};

export const DisplayContext = createContext<Display>(fallback);

export function useDisplay(): Display {
  return useContext(DisplayContext);
}
