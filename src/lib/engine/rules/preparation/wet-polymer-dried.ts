import { shopWindow } from '../../shop/shop';
import { commonPractice } from '../../sources/provenance';
import { substrate } from '../../substrates/substrates';
import { minutes } from '../../units/construct';
import type { Rule } from '../rule';

export default {
	id: 'wet-polymer-dried',
	station: 'preparation',
	competency: 'preparation',
	skill: 'C4',
	title: { en: 'Damp nylon is dried first', es: 'El nailon húmedo se seca primero' },
	why: {
		en: 'Nylon takes water out of the air like a sponge. In the oven it turns to steam under the film.',
		es: 'El nailon toma agua del aire como una esponja. En el horno se vuelve vapor bajo la película.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'bake-out#wet-polymer-dried',
	breaks: { low: ['outgassing-blisters'], high: ['distorted-part', 'colour-shift'] },
	outcome: {
		en: 'Short: blisters in the bake. Long: the plastic yellows and turns brittle.',
		es: 'Corto: ampollas en el horneado. Largo: el plástico amarillea y se vuelve quebradizo.'
	},
	evidence: {
		en: 'Weigh a part before and after drying; it gets lighter until it is dry.',
		es: 'Pese una pieza antes y después de secar; pierde peso hasta quedar seca.'
	},
	field: 'drying-time',
	applies: ({ job }) =>
		job.parts.some(
			({ material, humidStore }) => humidStore && material !== 'unknown' && substrate(material).takesWater
		),
	expects({ shop }) {
		return { kind: 'range', ...shopWindow(shop, 'drying.time'), amber: minutes(20) };
	}
} satisfies Rule;
