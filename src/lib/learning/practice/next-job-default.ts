/**
 * How the next practice job is chosen where the person does not choose it: by nextJob, or drawn from all on offer.
 * `npm run simulate` lets the same made-up people practise either way under two models of learning; only what leaves
 * their skills better on average under both may be the default, and the run fails where this says otherwise. As it
 * stands, nextJob lifts the weakest skill but under one of the models not the average.
 */
export const NEXT_JOB_DEFAULT: 'adaptive' | 'random' = 'random';
