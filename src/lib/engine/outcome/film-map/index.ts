/** What a gun lays on a witness panel, as a teaching model. */
export { filmMap, type FilmMap } from './film-map';
export { FILM_CLASSES, type FilmClass, type FilmVerdict } from './film-places';
export {
	beyondReach,
	GUN_CONTROLS,
	GUN_CONTROL_IDS,
	type GunControlId,
	type GunSettings
} from './gun-controls';
export { TEACHING_GUN } from './teaching-gun';
