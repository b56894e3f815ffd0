import type { FrameWords } from '../en/frame';

export const frame: FrameWords = {
	demo: 'Taller de muestra:',
	demoIs: 'todos los nombres, cifras e imágenes son inventados',
	board: 'Tablón',
	newMold: 'Molde nuevo',
	patterns: 'Modelos',
	materials: 'Materiales',
	room: 'Sala de lectura',
	shop: 'Taller',
	people: 'Personas',
	menu: 'Menú',
	main: 'Principal',
	mainFolded: 'Principal, plegado',
	signIn: 'Identificarse',
	signOut: 'Salir',
	skip: 'Ir a la página',
	aid: 'Una ayuda para planificar.',
	aidIs: 'La ficha técnica, la FDS, las normas locales y la práctica autorizada van primero.',
	screen: 'Pantalla',
	auto: 'Auto',
	light: 'Clara',
	dark: 'Oscura',
	contrast: 'Alto contraste',
	'e-ink': 'Tinta electrónica',
	roles: {
		apprentice: 'aprendiz',
		'mold maker': 'moldista',
		supervisor: 'supervisor',
		owner: 'propietario'
	}
};
