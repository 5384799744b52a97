import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hexOfColorWords } from '#core/stash/color-words';
import { columnHabits } from '#core/stash/table/column-habits';
import { guessColumns } from '#core/stash/table/guess-columns';
import { isUnmeasured, kindOfAmount, readAmount } from '#core/stash/table/read-amount';
import { readWrittenDate } from '#core/stash/table/read-written-date';
import { lengthFromInches as inches } from '#core/units/length';
import type { StashColumn } from '#core/domain/stash-table';

const US = { dateOrder: 'month-first', bareUnit: 'in', thousands: ',' } as const;
const EUROPE = { dateOrder: 'day-first', bareUnit: 'cm', thousands: '.' } as const;
const habitsOf = (column: StashColumn, cells: readonly string[], customs: typeof US | typeof EUROPE = US) =>
  columnHabits((one) => (one === column ? cells : []), customs);
const date = (text: string, order: 'month-first' | 'day-first' = 'month-first') => {
  const read = readWrittenDate(text, order);
  return read.ok ? read.value : null;
};

describe('a date as people write it', () => {
  it.each([
    ['2025-03-14', '2025-03-14'],
    ['2025/3/4', '2025-03-04'],
    ['3/14/2025', '2025-03-14'],
    ['3-14-25', '2025-03-14'],
    ['14.3.2025', '2025-03-14'],
    ['March 14, 2025', '2025-03-14'],
    ['Mar. 3rd 2025', '2025-03-03'],
    ['14 Jan 2025', '2025-01-14'],
    ['Dec 2024', '2024-12'],
    ['12/2024', '2024-12'],
    ['2024-12', '2024-12'],
    ['2024', '2024'],
    ['3/14/2025 10:30', '2025-03-14'],
  ])('%j is %s', (text, expected) => {
    expect(date(text)).toBe(expected);
  });

  it('goes by the order of its column where both readings are dates', () => {
    expect([date('3/4/2025'), date('3/4/2025', 'day-first')]).toEqual(['2025-03-04', '2025-04-03']);
  });

  it.each(['', 'soon', '31/31/2025', '2025-02-30', 'Mai 3', '12', 'March', '1/2/3/4'])(
    '%j is none',
    (text) => {
      expect(date(text)).toBeNull();
    },
  );

  it('never throws, and what is read is a date', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 30 }), (text) => {
        const read = date(text);
        if (read !== null) expect(read).toMatch(/^\d{4}(-\d\d(-\d\d)?)?$/);
      }),
    );
  });

  it('is any day, written either way with the order of the column', () => {
    const day = fc.date({ min: new Date('2001-01-01'), max: new Date('2099-12-28'), noInvalidDate: true });
    fc.assert(
      fc.property(day, (on) => {
        const [year, month, ofMonth] = on.toISOString().slice(0, 10).split('-').map(Number);
        const expected = on.toISOString().slice(0, 10);
        expect(date(`${month}/${ofMonth}/${year}`)).toBe(expected);
        expect(date(`${ofMonth}.${month}.${year}`, 'day-first')).toBe(expected);
      }),
    );
  });
});

describe('a whole column', () => {
  it('says which number is the month, unless it says both or nothing', () => {
    expect(habitsOf('bought-on', ['1/2/2025', '25/2/2025']).dateOrder).toBe('day-first');
    expect(habitsOf('bought-on', ['1/2/2025', '2/25/2025'], EUROPE).dateOrder).toBe('month-first');
    expect(habitsOf('bought-on', ['1/2/2025'], EUROPE).dateOrder).toBe('day-first');
    expect(habitsOf('bought-on', ['25/2/2025', '2/25/2025']).dateOrder).toBe('month-first');
  });

  it('says what a bare number is', () => {
    expect(habitsOf('size', ['2.5', '1 yd', '3 yds', '36"']).bareUnit).toBe('yd');
    expect(habitsOf('size', ['2.5', 'FQ']).bareUnit).toBe('in');
    expect(habitsOf('size', ['0.5 m', '2', '1,5 m'], EUROPE).bareUnit).toBe('m');
  });

  it('says what sets off thousands', () => {
    expect(habitsOf('cost', ['$1,600', '12.50'], EUROPE).thousands).toBe(',');
    expect(habitsOf('cost', ['1.600', '12,50']).thousands).toBe('.');
    expect(habitsOf('cost', ['1,600']).thousands).toBe(',');
  });
});

describe('an amount of fabric', () => {
  const read = (text: string, unit: 'yd' | 'in' | 'cm' = 'in') => {
    const amount = readAmount(text, unit, inches(42));
    return amount.ok ? [amount.value.width, amount.value.length, amount.value.unitLength] : null;
  };

  it.each([
    ['half yard', 18],
    ['a half yd', 18],
    ['quarter yard', 9],
    ['three quarters of a yard', 27],
    ['1 yard', 36],
    ['one yard', 36],
    ['2/3 yd', 24],
    ['1 yd 9 in', 45],
  ])('%j is %d in', (text, length) => {
    expect(read(text)).toEqual([inches(42), inches(length), null]);
  });

  it.each(['FQ x 3', '3 FQ', '3 fat quarters', '3 x FQ', '3 pcs FQ', 'fq*3'])(
    '%j is three fat quarters',
    (text) => {
      expect(read(text)).toEqual([inches(22), inches(54), inches(18)]);
      expect(kindOfAmount(text)).toBe('fat-quarter');
    },
  );

  it('is in the unit of its column where it names none', () => {
    expect([read('2.5', 'yd'), read('2.5')]).toEqual([
      [inches(42), inches(90), null],
      [inches(42), inches(2.5), null],
    ]);
  });

  it('may be there without being measured', () => {
    expect(['scrap', ' Scraps', '?', '1 yd', ''].map(isUnmeasured)).toEqual([true, true, true, false, false]);
  });
});

describe('columns without a title that says what they hold', () => {
  it('are guessed by what most of their cells look like', () => {
    const rows = [
      ['Rust', '1 1/2 yd', '$12.00', '3/14/2025'],
      ['Moss', 'FQ', '', 'Dec 2024'],
      ['Teal', 'scrap', '€ 9', ''],
    ];
    expect(guessColumns(['Name', 'A', 'B', 'C'], rows, true)).toEqual(['name', 'size', 'cost', 'bought-on']);
  });

  it('are left alone where a title has the meaning, and where nothing looks like it', () => {
    const rows = [['Rust', '1 yd', '2 yd', 'blue']];
    expect(guessColumns(['Name', 'Amt', 'Other', 'More'], rows, true)).toEqual(['name', 'size', null, null]);
  });
});

describe('color words', () => {
  it.each([
    ['moss green', '#68724a'],
    ['dark gray', '#54575c'],
    ['grey', '#8a8c90'],
    ['off-white and navy', '#faf9f6'],
    ['heather, navy', '#263252'],
  ])('%j are drawn as %s', (words, hex) => {
    expect(hexOfColorWords(words)).toBe(hex);
  });

  it('that nobody knows are none', () => {
    expect([hexOfColorWords(''), hexOfColorWords('zzz')]).toEqual([null, null]);
  });
});
