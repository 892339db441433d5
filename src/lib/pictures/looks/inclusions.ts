import type { Look } from './look';
import { NOTHING_SEEN } from './nothing-seen';

/** Things in a film that do not belong there. */
export const inclusionLooks = {
	dirt: {
		grows: 'count',
		plain: {
			en: 'Scattered small bumps, a little duller than the film.',
			es: 'Bultos pequeños y dispersos, algo más opacos que la película.'
		},
		raking: {
			en: 'Scattered bumps with shadows, and a curved thread here and there.',
			es: 'Bultos dispersos con sombra y, aquí y allá, un hilo curvo.'
		},
		loupe: {
			en: 'A dull, lumpy nib of another colour, a curled thread beside it.',
			es: 'Un grumo opaco e irregular de otro color, con un hilo enroscado al lado.'
		},
		section: {
			en: 'An irregular body sits high in the film, which rises over it.',
			es: 'Un cuerpo irregular en lo alto de la película, que se levanta sobre él.'
		}
	},
	'gel-bits': {
		grows: 'count',
		plain: {
			en: 'Scattered small bumps, as shiny as the film.',
			es: 'Bultos pequeños y dispersos, tan brillantes como la película.'
		},
		raking: {
			en: 'Scattered round bumps with shadows, no threads among them.',
			es: 'Bultos redondos y dispersos con sombra, sin hilos entre ellos.'
		},
		loupe: {
			en: 'A clear, rounded lump of the film’s own colour with a smooth surface.',
			es: 'Un bulto transparente y redondo, del color de la película y de superficie lisa.'
		},
		section: {
			en: 'A rounded, clear body rests in the film and bulges out of it.',
			es: 'Un cuerpo redondo y transparente descansa en la película y sobresale.'
		}
	},
	'grit-inclusion': {
		grows: 'count',
		plain: {
			en: 'Scattered small bumps, dark, with a glint now and then.',
			es: 'Bultos pequeños y dispersos, oscuros, con algún destello.'
		},
		raking: {
			en: 'Scattered bumps with hard, dark shadows.',
			es: 'Bultos dispersos con sombras duras y oscuras.'
		},
		loupe: {
			en: 'A dark grain with flat faces and corners, in a bare halo.',
			es: 'Un grano oscuro de caras planas y esquinas, dentro de un halo desnudo.'
		},
		section: {
			en: 'A cornered body reaches from the substrate to above the film, which has drawn back from it.',
			es: 'Un cuerpo con esquinas va del sustrato hasta encima de la película, que se retiró de él.'
		}
	},
	'cross-contamination': {
		grows: 'count',
		plain: {
			en: 'Specks of a different colour, and thin stripes of it drawn out along the stroke.',
			es: 'Motas de otro color y rayas finas de ese color, estiradas en el sentido de la pasada.'
		},
		raking: {
			en: 'Low rings around the specks; the stripes are flat.',
			es: 'Anillos bajos alrededor de las motas; las rayas son planas.'
		},
		loupe: {
			en: 'A speck of another colour at the bottom of a shallow ringed dip.',
			es: 'Una mota de otro color en el fondo de un hoyo poco hondo con anillo.'
		},
		section: {
			en: 'A body of another colour lies in the film under a shallow dip.',
			es: 'Un cuerpo de otro color en la película, bajo un hoyo poco hondo.'
		}
	},
	fingerprint: {
		grows: 'strength',
		plain: {
			en: 'A dull oval, ridged inside with fine curved lines.',
			es: 'Un óvalo opaco con líneas curvas finas por dentro.'
		},
		raking: {
			en: 'Fine curved lines within an oval; they hardly stand up.',
			es: 'Líneas curvas finas dentro de un óvalo; apenas sobresalen.'
		},
		loupe: {
			en: 'Evenly spaced curves run around a common middle.',
			es: 'Curvas a distancia pareja rodean un mismo centro.'
		},
		section: NOTHING_SEEN.section
	}
} satisfies Record<string, Look>;
