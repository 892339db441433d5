import type { PictureId } from './defects';
import type { ShadedView } from './request';

/** Two defects that are taken for one another, and the closer view in which the eye tells them apart. */
export type LookAlike = { readonly pair: readonly [PictureId, PictureId]; readonly toldApartIn: ShadedView };

/** Pairs a picture can tell apart. Others differ by touch, by time or in a section only. */
export const LOOK_ALIKES: readonly LookAlike[] = [
	{ pair: ['fisheyes', 'pinholes'], toldApartIn: 'loupe' },
	{ pair: ['fisheyes', 'outgassing-blisters'], toldApartIn: 'loupe' },
	{ pair: ['dirt', 'gel-bits'], toldApartIn: 'loupe' },
	{ pair: ['solvent-pop', 'pinholes'], toldApartIn: 'loupe' },
	{ pair: ['blushing', 'amine-bloom'], toldApartIn: 'loupe' },
	{ pair: ['flaking', 'intercoat-peel'], toldApartIn: 'loupe' },
	{ pair: ['runs', 'cold-run'], toldApartIn: 'loupe' },
	{ pair: ['mask-bleed', 'mask-ridge'], toldApartIn: 'loupe' },
	{ pair: ['print-through', 'orange-peel'], toldApartIn: 'loupe' }
];
