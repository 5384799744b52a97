import fc from 'fast-check';

/** The same random inputs in every run, so that a mutation report can be made again. */
fc.configureGlobal({ seed: 320 });
