import rule from '../../../../../src/lib/engine/rules/safety/may-wear-it';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'cleared, tested, shaved',
		job: job(),
		passes: [choice('spray')],
		fails: [[choice('stop'), 'wrong']]
	},
	{
		name: 'no clearance: not even a loose hood',
		job: job({ wearer: { medicalClearanceValid: false } }),
		passes: [choice('stop')],
		fails: [[choice('spray'), 'wrong']]
	},
	{
		name: 'a beard sprays in the loose hood',
		job: job({ wearer: { beard: true } }),
		passes: [choice('spray')],
		fails: [[choice('stop'), 'wrong']]
	},
	{
		name: 'a beard and only tight masks in the shop',
		job: job({ wearer: { beard: true }, bench: { breathing: ['half-mask'] } }),
		passes: [choice('stop')],
		fails: [[choice('spray'), 'wrong']]
	},
	{
		name: 'isocyanate and no air-fed hood in the shop',
		job: job({ coating: 'demo-a-isocyanate', bench: { breathing: ['half-mask', 'dust-mask'] } }),
		passes: [choice('stop')],
		fails: [[choice('spray'), 'wrong']]
	}
]);
