import { describe, expect, test } from 'vitest';
import { definesOf } from '#setup/addon-build';
import { missingPackages } from '#setup/dependencies';
import { missingLibraries } from '#setup/system-libraries';

describe('packages', () => {
  const locked = {
    '': { version: '0.1.0' },
    'node_modules/a': { version: '1.0.0' },
    'node_modules/b': { version: '2.0.0' },
    'node_modules/only-elsewhere': { version: '3.0.0', optional: true },
  };

  test('are in place when all that are not optional are there in their version', () => {
    const installed = { 'node_modules/a': { version: '1.0.0' }, 'node_modules/b': { version: '2.0.0' } };
    expect(missingPackages(locked, installed)).toEqual([]);
  });

  test('are missing when absent, old, or optional and old', () => {
    const installed = {
      'node_modules/a': { version: '0.9.0' },
      'node_modules/only-elsewhere': { version: '2.0.0' },
    };
    expect(missingPackages(locked, installed)).toEqual([
      'node_modules/a',
      'node_modules/b',
      'node_modules/only-elsewhere',
    ]);
  });

  test('are all missing before the first installation', () => {
    expect(missingPackages(locked, {})).toEqual(['node_modules/a', 'node_modules/b']);
  });
});

describe('shared libraries', () => {
  test('are missing where the linker says so', () => {
    const output = [
      '\tlinux-vdso.so.1 (0x00007ffd)',
      '\tlibgtk-3.so.0 => not found',
      '\tlibc.so.6 => /lib/libc.so.6 (0x00007f)',
      '\tlibasound.so.2 => not found',
    ].join('\n');
    expect(missingLibraries(output)).toEqual(['libgtk-3.so.0', 'libasound.so.2']);
    expect(missingLibraries('\tstatically linked\n')).toEqual([]);
  });
});

describe('compiler switches', () => {
  test('are taken one by one from a list of defines', () => {
    const gypi = "# made up\n{\n  'defines': [\n    'HAVE_IT=1',\n    'SIZE=-16000',\n    'ON'\n  ],\n}\n";
    expect(definesOf(gypi)).toEqual(['-DHAVE_IT=1', '-DSIZE=-16000', '-DON']);
  });
});
