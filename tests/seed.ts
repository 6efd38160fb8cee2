/** The same random examples on every run: what is red once is red again. `SEED=n` tries others. */
import fc from 'fast-check';

fc.configureGlobal({ seed: Number(process.env.SEED ?? 20270306) });
