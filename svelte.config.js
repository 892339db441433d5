import adapter from '@sveltejs/adapter-node';
import { mdsvex } from 'mdsvex';
import { bareLessThan, headingIds, moduleAttribute } from './src/lib/lessons/markdown.js';

/** @type {import('@sveltejs/kit').Config} */
export default {
	extensions: ['.svelte', '.md'],
	preprocess: [
		mdsvex({ extensions: ['.md'], smartypants: false, rehypePlugins: [headingIds, bareLessThan] }),
		moduleAttribute
	],
	compilerOptions: { runes: true },
	kit: {
		adapter: adapter({ precompress: true }),
		typescript: {
			config: (config) => ({ ...config, include: [...config.include, '../content/**/*.ts'] })
		},
		// the Origin check is ours (src/hooks.server.ts): on plain http in a shop network kit cannot know its own origin
		csrf: { trustedOrigins: ['*'] },
		csp: {
			mode: 'auto',
			directives: {
				'default-src': ['self'],
				'script-src': ['self'],
				'style-src': ['self', 'unsafe-inline'],
				'img-src': ['self', 'data:'],
				'object-src': ['none'],
				'base-uri': ['self'],
				'form-action': ['self'],
				'frame-ancestors': ['none']
			}
		}
	}
};
