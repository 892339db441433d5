/*
 * Draws random jobs and shops and holds every plan against what a plan must never be. Too long for every run of the
 * tests, which take the first tenth of it.
 *
 *   npm run property [-- jobs [first shop]]
 */
import { checkShop, JOBS_PER_SHOP, nothingChecked } from './check-jobs';

const MILLION = 1_000_000;
const [jobs = MILLION, first = 0] = process.argv.slice(2).map(Number);
const shops = Math.ceil(jobs / JOBS_PER_SHOP);
const checked = nothingChecked();
const started = Date.now();
for (let done = 0; done < shops; done += 1) {
	checkShop(first + done, checked);
	if ((done + 1) % 500 === 0)
		console.log(`${(done + 1) * JOBS_PER_SHOP} jobs, ${checked.problems.length} of them with a problem`);
}
const { decisions, conflicts, rules, problems } = checked;
console.log(`${shops * JOBS_PER_SHOP} jobs in ${Math.round((Date.now() - started) / 1000)} s`);
console.log(
	`accepted ${decisions.accept}, asked ${decisions.ask}, refused ${decisions.refuse}; in ${conflicts} limits did not meet; ${rules.size} rules spoke`
);
for (const problem of problems.slice(0, 50)) console.log(problem);
if (problems.length) process.exitCode = 1;
