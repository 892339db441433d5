import { EXTENT } from './looks/extent';
import { LOOKS } from './looks';
import { SOUND } from './looks/sound';
import type { PictureRequest, View } from './request';
import type { Text } from './text';

/** What a picture shows, for who cannot see it. The look only: a defect's name is never in it. */
export function describePicture({ defect, severity }: PictureRequest, view: View): Text {
	if (defect === 'sound') return SOUND[view];
	const look = LOOKS[defect];
	const extent = EXTENT[look.grows][severity];
	return { en: `${look[view].en} ${extent.en}`, es: `${look[view].es} ${extent.es}` };
}
