const en = {
	erased: (day: string) => `erased on ${day}`,
	altered: 'text changed outside this program',
	missing: 'text missing',
	nobody: 'unknown person'
};

const es = {
	erased: (day: string) => `borrado el ${day}`,
	altered: 'texto cambiado fuera de este programa',
	missing: 'falta el texto',
	nobody: 'persona desconocida'
} satisfies typeof en;

/** What stands in place of a name or text that cannot be shown. */
export const erasable = { en, es };
