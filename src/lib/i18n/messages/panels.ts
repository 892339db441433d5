const en = {
	stamp: 'SIGNED',
	until: (date: string) => `until ${date}`,
	since: (date: string) => `since ${date}`,
	rack: (person: string) => `Skill panels of ${person}`,
	line: 'The line',
	place: { done: 'done', current: 'you are here', open: 'to do' }
};

const es = {
	stamp: 'FIRMADO',
	until: (date: string) => `hasta el ${date}`,
	since: (date: string) => `desde el ${date}`,
	rack: (person: string) => `Paneles de habilidad de ${person}`,
	line: 'La línea',
	place: { done: 'hecho', current: 'usted está aquí', open: 'por hacer' }
} satisfies typeof en;

export const panels = { en, es };
