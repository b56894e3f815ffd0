import type { SectionWords } from '../en/section';

export const section: SectionWords = {
	toScale: 'Sección, a escala',
	coats: (factor) => `capas dibujadas ×${factor}`,
	shell: (factor) => `madreforma ×${factor}`,
	release: 'desmoldante dibujado como una línea',
	nothing: 'nada',
	size: (width, height) => `${width} por ${height}`,
	asPlanned: (size, layers) =>
		`Sección del molde como está planeado sobre un modelo de ${size}: ${layers}.`,
	soFar: (size, { done, current, planned }) =>
		`Sección del molde sobre un modelo de ${size}. Hecho: ${done}. Ahora: ${current}. Previsto: ${planned}.`
};
