/** What stands on the containers of a mold's materials. Signal words and names of symbols: GHS, UN rev. 9, 1.4.10. */
export const containers = {
	signal: { danger: 'Danger', warning: 'Warning' },
	symbols: {
		GHS01: 'Exploding bomb',
		GHS02: 'Flame',
		GHS03: 'Flame over circle',
		GHS04: 'Gas cylinder',
		GHS05: 'Corrosion',
		GHS06: 'Skull and crossbones',
		GHS07: 'Exclamation mark',
		GHS08: 'Health hazard',
		GHS09: 'Environment'
	},
	/** What each symbol tells of, in a few words. */
	means: {
		GHS01: 'explodes',
		GHS02: 'catches fire',
		GHS03: 'feeds a fire',
		GHS04: 'gas under pressure',
		GHS05: 'burns skin and eyes, or eats metal',
		GHS06: 'poisons at once, in small amounts',
		GHS07: 'irritates, makes drowsy, harms when taken in, or brings an allergy of the skin',
		GHS08: 'harms inside, for long or for life, or brings an allergy of the airways',
		GHS09: 'kills what lives in water'
	},
	title: 'What the containers say',
	how: 'Signs as the hazard statements of each data sheet put them on a label. The container and its SDS come first: if they say more, they are right.',
	none: 'Its data sheet names no hazard statement. That is no promise: read its SDS.',
	gravest: 'The statement alone leaves open which signal word applies; the graver one is shown.',
	unknown: (codes: string) => `Not in the list, read them on the container: ${codes}.`,
	uses: {
		detail: 'detail coats',
		build: 'build coats',
		shell: 'backup shell',
		reinforcement: 'cloth in the shell',
		wax: 'wax release',
		film: 'parting film',
		sealer: 'sealer',
		casting: 'first pour'
	}
};

export type ContainerWords = typeof containers;
