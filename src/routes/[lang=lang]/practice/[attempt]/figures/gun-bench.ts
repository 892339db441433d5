export { GunBench as default } from '$lib/ui';
