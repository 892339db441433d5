import { expect, test } from 'vitest';
import { situation } from '../../../../../src/lib/engine/plan/situation';
import rule from '../../../../../src/lib/engine/rules/spraying/coat-interval';
import { minutes } from '../../../../../src/lib/engine/units/construct';
import { job, quantity, shop } from '../bench';
import { ruleCases } from '../rule-cases';

const { lines } = shop.sheets['demo-d-high-bake']!;
const oneCoat = {
	...shop.sheets['demo-d-high-bake']!,
	lines: { ...lines, coats: [{ ...lines.coats![0]!, min: 1, max: 1 }] }
};

ruleCases(rule, [
	{
		name: 'sheet F wants 3 to 15 min; 40 min later the first coat is set',
		job: job(),
		passes: [quantity(minutes(3)), quantity(minutes(15))],
		fails: [
			[quantity(minutes(1)), 'low'],
			[quantity(minutes(40)), 'high']
		]
	},
	{
		name: 'the air-cured film waits longer',
		job: job({ coating: 'demo-e-air-cured' }),
		passes: [quantity(minutes(30))],
		fails: [[quantity(minutes(5)), 'low']]
	}
]);

test('there is nothing to wait for with a single coat', () => {
	const seen = situation(job({ coating: oneCoat.id }), { ...shop, sheets: { [oneCoat.id]: oneCoat } });
	expect(rule.applies(seen!)).toBe(false);
});
