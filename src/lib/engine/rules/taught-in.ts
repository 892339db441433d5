import type { Rule } from './rule';

/** The lesson that teaches a rule, as in its address. */
export const taughtIn = ({ lesson }: Pick<Rule, 'lesson'>): string => lesson.slice(0, lesson.indexOf('#'));
