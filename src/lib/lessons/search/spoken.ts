const ENTITIES: Readonly<Record<string, string>> = { '&nbsp;': ' ', '&lt;': '<', '&gt;': '>', '&amp;': '&' };

/**
 * What a reader finds written in a lesson's Markdown: a line per paragraph, heading and item. Front matter, script,
 * tags and Markdown's own signs are gone; the words of a caution stay, and what a block works out is not in it.
 */
export const spoken = (markdown: string): string =>
	markdown
		.replace(/^---[\s\S]*?\n---/, '')
		.replace(/<script[\s\S]*?<\/script>/g, '')
		.replace(/<CautionBlock([\s\S]*?)\/>/g, (_block, attributes: string) =>
			[...attributes.matchAll(/\b(?:hazard|consequence|avoid)="([^"]*)"/g)].map(([, text]) => text).join('\n')
		)
		.replace(/<\/?[A-Za-z][^>]*>/g, '')
		.replace(/\{[^}]*\}/g, '')
		.replace(/!?\[([^\]]*)\]\([^)]*\)/g, '$1')
		.replace(/^\s*(?:#{1,6} |[-*] |\d+\. |> ?)/gm, '')
		.replace(/\|/g, '\n')
		.replace(/\*\*|__|`|(?<![\p{L}\p{N}])[_*]|[_*](?![\p{L}\p{N}])/gu, '')
		.replace(/&\w+;/g, (entity) => ENTITIES[entity] ?? entity)
		.split('\n')
		.map((line) => line.trim())
		.filter((line) => /[\p{L}\p{N}]/u.test(line))
		.join('\n');
