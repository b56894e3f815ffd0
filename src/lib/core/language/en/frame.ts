/** What stands round a page that is read in more than one language. */
export const frame = {
	demo: 'Demo shop:',
	demoIs: 'every name, figure and picture is invented',
	board: 'Board',
	newMold: 'New mold',
	patterns: 'Patterns',
	materials: 'Materials',
	room: 'Reading room',
	shop: 'Shop',
	people: 'People',
	menu: 'Menu',
	main: 'Main',
	mainFolded: 'Main, folded',
	signIn: 'Sign in',
	signOut: 'Sign out',
	skip: 'Skip to the page',
	aid: 'A planning aid.',
	aidIs: 'The data sheet, the SDS, local codes and licensed practice come first.',
	screen: 'Screen',
	auto: 'Auto',
	light: 'Light',
	dark: 'Dark',
	contrast: 'High contrast',
	'e-ink': 'E-ink',
	roles: {
		apprentice: 'apprentice',
		'mold maker': 'mold maker',
		supervisor: 'supervisor',
		owner: 'owner'
	}
};
export type FrameWords = typeof frame;
