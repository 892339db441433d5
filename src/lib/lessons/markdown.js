/**
 * What happens to a lesson's Markdown on its way to a Svelte component. JavaScript, because svelte.config.js
 * imports it and Node 20 cannot load TypeScript there.
 *
 * @typedef {{ type: string, tagName?: string, value?: string, properties?: Record<string, unknown>, children?: Node[] }} Node
 */

/** @param {Node} node @returns {string} */
const text = (node) => (node.value ?? '') + (node.children ?? []).map(text).join('');

/** @param {string} words */
const slug = (words) =>
	words
		.replace(/&[#\w]+;/g, ' ')
		.normalize('NFKD')
		.replace(/\p{M}/gu, '')
		.toLowerCase()
		.replace(/[^a-z0-9]+/g, '-')
		.replace(/^-|-$/g, '') || 'section';

/** @param {Node} node @param {(node: Node) => void} see */
const each = (node, see) => {
	see(node);
	node.children?.forEach((child) => each(child, see));
};

/** rehype: every h1..h4 without an id gets a stable, unique one made from its words */
export const headingIds = () => (/** @type {Node} */ tree) => {
	/** @type {Map<string, number>} */
	const seen = new Map();
	each(tree, (node) => {
		if (node.type !== 'element' || !/^h[1-4]$/.test(node.tagName ?? '')) return;
		const base = slug(text(node));
		const count = (seen.get(base) ?? 0) + 1;
		seen.set(base, count);
		node.properties = { id: count > 1 ? `${base}-${count}` : base, ...node.properties };
	});
};

/** rehype: a bare "<" in prose ("< 25 µm") is text, not a tag; {expressions} are left alone */
export const bareLessThan = () => (/** @type {Node} */ tree) =>
	each(tree, (node) => {
		if (node.type === 'text' && node.value?.includes('<'))
			node.value = node.value
				.split(/(\{[^}]*\})/)
				.map((part, index) => (index % 2 ? part : part.replace(/<(?![A-Za-z/!])/g, '&lt;')))
				.join('');
	});

/**
 * Runs after mdsvex, which still writes the attribute that Svelte 5 warns about.
 * @type {import('svelte/compiler').PreprocessorGroup}
 */
export const moduleAttribute = {
	name: 'lesson-module-attribute',
	markup: ({ content, filename }) =>
		filename?.endsWith('.md')
			? { code: content.replace('<script context="module">', '<script module>') }
			: undefined
};
