import { breached } from '../../grading/breached';
import { rightAnswers } from '../../grading/grade';
import type { Plan } from '../../plan/plan';
import type { Situation } from '../../plan/situation';
import type { Si } from '../../units/dimension';
import { brokenRules } from '../broken';
import { wetness } from '../measures/wetness';
import type { Standing } from '../outcome';
import { putIn } from '../put-in';
import { AS_WANTED } from '../standing';
import type { GunSettings } from './gun-controls';

const set = (value: Si) => ({ kind: 'quantity', value, typed: '' }) as const;

/**
 * How wet the drops land: the outcome's own measure, of a job in which distance and speed are as set and all else is as
 * the plan answers it.
 */
export function landingOf(settings: GunSettings, plan: Plan, seen: Situation): Standing {
	const answers = {
		...rightAnswers(plan),
		'gun-distance': set(settings['gun-distance']),
		'gun-speed': set(settings['gun-speed'])
	};
	const job = putIn(plan, seen, answers);
	const landed = wetness(job, brokenRules(breached(plan, job.answers), job));
	return landed ? { degree: landed.degree, side: landed.side } : AS_WANTED;
}
