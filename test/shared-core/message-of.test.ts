import { expect, test } from 'vitest';
import { messageOf } from '#core/message-of';

test('anything thrown has a message', () => {
  expect(messageOf(new RangeError('Too long'))).toBe('Too long');
  expect(messageOf('Too long')).toBe('Too long');
  expect(messageOf(undefined)).toBe('undefined');
});
