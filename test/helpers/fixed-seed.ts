import fc from 'fast-check';

/** The same random inputs in every run, so that a mutation report can be made again; a mutant found needs no smaller example. */
fc.configureGlobal({ seed: 320, endOnFailure: true });
