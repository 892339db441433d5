import { metres, sheetLimits } from '$lib/engine';
import type { Trap } from '../trap';
import { chose, materialOf, withMaterial } from './answers';

const eddy = () => ({ gauge: chose('eddy') });

export const inspectionTraps: readonly Trap[] = [
	{
		id: 'oxide-under-the-probe',
		rule: 'gauge-suits-substrate',
		from: 2,
		title: { en: 'A gauge zeroed on bare aluminium', es: 'Un medidor puesto en cero sobre aluminio desnudo' },
		weave: (job) =>
			materialOf(job) === 'aluminium-6061' ? withMaterial(job, 'anodised-aluminium') : undefined,
		overlooked: eddy
	},
	{
		id: 'probe-on-laminate',
		rule: 'gauge-suits-substrate',
		from: 1,
		title: {
			en: 'An eddy-current probe on a laminate',
			es: 'Una sonda de corrientes de Foucault sobre un laminado'
		},
		weave: (job) => (materialOf(job).endsWith('laminate') ? job : undefined),
		overlooked: eddy
	},
	{
		id: 'one-thin-spot',
		rule: 'film-readings-judged',
		from: 1,
		title: { en: 'One spot of the witness is thin', es: 'Un sitio del testigo está delgado' },
		weave: (job, random, shop) => {
			const film = sheetLimits(shop, job.coating, 'dry-film');
			if (!film || job.film) return undefined;
			const middle = (film.min + film.max) / 2;
			const spot = (share: number) =>
				[0.98, 1, 1.02].map((one) => metres(Number((middle * share * one).toPrecision(3))));
			const thin = (film.min * 0.7) / middle;
			const at = random.integer(0, 4);
			return {
				...job,
				readings: [1, 1.02, 0.99, 1.01, 1].map((share, index) => spot(index === at ? thin : share))
			};
		},
		overlooked: () => ({ 'film-verdict': chose('accept') })
	},
	{
		id: 'looks-good-anyway',
		rule: 'failed-witness-holds-load',
		from: 1,
		title: { en: 'The parts look good, the witness fails', es: 'Las piezas se ven bien, el testigo falla' },
		weave: (job) => job,
		overlooked: () => ({ 'failed-witness': chose('release') })
	},
	{
		id: 'own-release',
		rule: 'release-by-another',
		from: 1,
		title: { en: 'Nobody else is free to look', es: 'Nadie más está libre para revisar' },
		weave: (job) => job,
		overlooked: () => ({ 'release-by': chose('sprayer') })
	}
];
