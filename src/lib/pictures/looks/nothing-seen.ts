import type { Text } from '../text';

/** Views in which some defects do not show: said, because seeing nothing there is what tells them apart. */
export const NOTHING_SEEN = {
	raking: {
		en: 'The low lamp shows an even face: nothing stands up and nothing lies deep.',
		es: 'La lámpara rasante muestra una cara pareja: nada sobresale y nada se hunde.'
	},
	loupe: {
		en: 'The loupe shows a closed, even film.',
		es: 'La lupa muestra una película cerrada y pareja.'
	},
	section: {
		en: 'One layer of even thickness lies on the roughened substrate.',
		es: 'Una capa de espesor parejo cubre el sustrato rugoso.'
	}
} satisfies Record<string, Text>;
