export { OvenChart as default } from '$lib/ui';
