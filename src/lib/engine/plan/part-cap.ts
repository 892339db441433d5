import { shopValue } from '../shop/shop';
import type { Kelvin } from '../units/dimension';
import { materials } from './materials';
import { remembered } from './remembered';
import type { Situation } from './situation';
import { fromJob, workedOut, type Traced } from './trace';

type Cap = Traced<'temperature'>;

const lowest = (caps: readonly Cap[]): Cap | undefined =>
	caps.reduce<Cap | undefined>((low, cap) => (low && low.value <= cap.value ? low : cap), undefined);

/** What the customer writes replaces what the shop knows of the materials, never the limit of a fitted item. */
function materialCaps(seen: Situation): readonly Cap[] {
	const { job, shop } = seen;
	if (job.writtenCap !== null) {
		const label = { en: "Customer's written limit", es: 'Límite escrito del cliente' };
		return [fromJob('writtenCap', 'temperature', job.writtenCap, label)];
	}
	return materials(seen).map((material) => shopValue(shop, `cap.${material}`));
}

/** Whether the limit of every part can be named: its material is known, or the customer wrote one. */
export const everyMaterialSettled = ({ job }: Situation): boolean =>
	job.writtenCap !== null || job.parts.every(({ material }) => material !== 'unknown');

/** The lowest limit of all materials and of everything still fitted; undefined where no material is known. */
export const lowestMaterialCap = remembered((seen: Situation): Cap | undefined => {
	const fitted = seen.job.parts.flatMap((part) =>
		part.fitted.map((item) => shopValue(seen.shop, `cap.${item}`))
	);
	return lowest([...materialCaps(seen), ...fitted]);
});

/** How hot the lowest-tempered part may get; undefined where no part gives a tempering temperature. */
export function temperCap({ job, shop }: Situation): Cap | undefined {
	const tempers = job.parts.flatMap(({ tempered }) => (tempered === null ? [] : [tempered]));
	if (!tempers.length) return undefined;
	const temper = fromJob('parts.tempered', 'temperature', Math.min(...tempers) as Kelvin, {
		en: 'Tempering temperature',
		es: 'Temperatura de revenido'
	});
	const below = shopValue(shop, 'cap.below-temper');
	const label = { en: 'Limit of the tempered part', es: 'Límite de la pieza templada' };
	return workedOut('temper-margin', 'temperature', temper.value - below.value, label, { temper, below });
}

/** Highest temperature any spot of these parts may reach; undefined where nothing about it is known. */
export const lowestCap = remembered((seen: Situation): Cap | undefined => {
	const caps = [lowestMaterialCap(seen), temperCap(seen)];
	return lowest(caps.filter((cap) => cap !== undefined));
});
