import { GEAR } from '../../setup/fields/safety';
import { count } from '../../units/construct';
import { defaultNumber } from '../define';

/** Tasks for which the shop's written hazard assessment lists gear. */
export const GEAR_TASKS = {
	degrease: { en: 'degreasing', es: 'desengrasar' },
	blast: { en: 'cabinet blasting and blow-off', es: 'granallar en cabina y sopletear' },
	mix: { en: 'measuring and mixing', es: 'medir y mezclar' },
	'mix-isocyanate': { en: 'measuring and mixing isocyanate', es: 'medir y mezclar isocianato' },
	spray: { en: 'spraying', es: 'aplicar' },
	'spray-isocyanate': {
		en: 'spraying isocyanate in an air-fed hood',
		es: 'aplicar isocianato con capucha de aire'
	},
	oven: { en: 'loading and unloading the oven', es: 'cargar y descargar el horno' }
} as const;
export type GearTask = keyof typeof GEAR_TASKS;
export type Protective = Exclude<keyof typeof GEAR, 'sandals'>;

const GLOVES_AND_SLEEVES = ['nitrile-gloves', 'long-sleeves'] as const;

/** What is listed until the shop puts its own assessment in: the least that is common for the task. */
const LISTED: Record<GearTask, readonly Protective[]> = {
	degrease: ['goggles', ...GLOVES_AND_SLEEVES],
	blast: ['goggles', 'ear-protection'],
	mix: ['goggles', ...GLOVES_AND_SLEEVES],
	'mix-isocyanate': ['goggles', 'face-shield', ...GLOVES_AND_SLEEVES],
	spray: ['goggles', 'nitrile-gloves', 'hooded-suit'],
	'spray-isocyanate': ['nitrile-gloves', 'hooded-suit'],
	oven: ['face-shield', 'heat-gloves', 'long-sleeves']
};

type GearValues = Record<`gear.${GearTask}.${Protective}`, ReturnType<typeof defaultNumber<'count'>>>;

export const PROTECTIVE = (Object.keys(GEAR) as (keyof typeof GEAR)[]).filter((item) => item !== 'sandals');

const gearValues = Object.fromEntries(
	(Object.keys(GEAR_TASKS) as GearTask[]).flatMap((task) =>
		PROTECTIVE.map((item) => [
			`gear.${task}.${item}`,
			defaultNumber(
				'count',
				count(LISTED[task].includes(item) ? 1 : 0),
				`The hazard assessment lists for ${GEAR_TASKS[task].en} (1 yes, 0 no): ${GEAR[item].en}`,
				`La evaluación de peligros pide para ${GEAR_TASKS[task].es} (1 sí, 0 no): ${GEAR[item].es}`
			)
		])
	)
) as GearValues;

/** Shop values the rules of this station lean on. */
export const safetyValues = { ...gearValues } as const;
