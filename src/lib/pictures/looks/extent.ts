import type { Severity } from '../request';
import type { Text } from '../text';
import type { Extent } from './look';

/** How much of it there is on the panel, in words; a loupe shows one place, and the words say what lies around it. */
export const EXTENT: Record<Extent, Record<Severity, Text>> = {
	count: {
		1: {
			en: 'On the panel as a whole: in a few places, far apart.',
			es: 'En el panel entero: en pocos sitios, separados.'
		},
		2: { en: 'On the panel as a whole: in many places.', es: 'En el panel entero: en muchos sitios.' },
		3: {
			en: 'On the panel as a whole: everywhere, hardly a clear patch left.',
			es: 'En el panel entero: por todas partes, casi sin zona limpia.'
		}
	},
	area: {
		1: { en: 'It takes up a small part of the panel.', es: 'Ocupa una parte pequeña del panel.' },
		2: { en: 'It takes up a good part of the panel.', es: 'Ocupa buena parte del panel.' },
		3: { en: 'It takes up a large part of the panel.', es: 'Ocupa una parte grande del panel.' }
	},
	strength: {
		1: { en: 'Faint: one has to look for it.', es: 'Leve: hay que buscarlo.' },
		2: { en: 'Plain to see.', es: 'Se ve sin buscarlo.' },
		3: { en: 'Strong: it is what one sees first.', es: 'Fuerte: es lo primero que se ve.' }
	}
};
