export { FilmMap as default } from '$lib/ui';
