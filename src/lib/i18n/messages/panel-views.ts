const en = {
	lookCloser: 'Look closer',
	view: {
		plain: 'as it hangs there',
		raking: 'under raking light, relief drawn stronger',
		loupe: 'under the loupe, relief drawn stronger',
		section: 'cut through, heights drawn many times larger'
	}
};

const es = {
	lookCloser: 'Mirar de cerca',
	view: {
		plain: 'como cuelga ahí',
		raking: 'con luz rasante, relieve exagerado',
		loupe: 'con lupa, relieve exagerado',
		section: 'en corte, alturas muy aumentadas'
	}
} satisfies typeof en;

/** Words of the ways a panel is looked at. */
export const panelViews = { en, es };
