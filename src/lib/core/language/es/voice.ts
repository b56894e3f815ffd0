import type { VoiceWords } from '../en/voice';

export const voice: VoiceWords = {
	units: {
		mm: ['milímetro', 'milímetros'],
		'cm²': ['centímetro cuadrado', 'centímetros cuadrados'],
		in: ['pulgada', 'pulgadas'],
		ft: ['pie', 'pies'],
		mL: ['mililitro', 'mililitros'],
		L: ['litro', 'litros'],
		'fl oz': ['onza líquida', 'onzas líquidas'],
		gal: ['galón', 'galones'],
		g: ['gramo', 'gramos'],
		kg: ['kilogramo', 'kilogramos'],
		oz: ['onza', 'onzas'],
		lb: ['libra', 'libras'],
		'°C': ['grado Celsius', 'grados Celsius'],
		'°F': ['grado Fahrenheit', 'grados Fahrenheit'],
		s: ['segundo', 'segundos'],
		min: ['minuto', 'minutos'],
		h: ['hora', 'horas'],
		d: ['día', 'días'],
		'%': ['por ciento', 'por ciento']
	},
	takeCare: (what) => `Tenga cuidado: ${what}`,
	testIn: ({ label, time }) => `${label}: prueba dentro de ${time}`,
	itIsTime: (label) => `${label}: es la hora`,
	left: ({ label, time }) => `${label}: quedan ${time}`,
	over: (label) => `${label}: terminó`
};
