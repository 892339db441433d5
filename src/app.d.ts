declare global {
	namespace App {
		interface Locals {
			app: import('$lib/server').App;
			lang: import('$lib/i18n').Lang;
			/** Who is signed in, or null. */
			who: import('$lib/server').Who | null;
			/** A sign-in was there and has ended by itself. */
			lapsed: boolean;
		}
	}
}

declare module '*.md' {
	import type { Component } from 'svelte';
	export const metadata: Record<string, unknown>;
	const component: Component;
	export default component;
}

export {};
