/** What the model in space can show. */
export type Layer = 'air' | 'locked' | 'runs' | 'faults';

interface LayerWords {
	/** On the choice. */
	name: string;
	/** What the dark color means. */
	marked: string;
	/** When nothing is dark. */
	none: string;
}

export const LAYERS: Record<Layer, LayerWords> = {
	air: {
		name: 'Air under the first coat',
		marked: 'air stays under the first coat',
		none: 'The first coat wets everything.'
	},
	locked: {
		name: 'Where the shell locks',
		marked: 'a shell in one piece locks here, in its best direction',
		none: 'A shell in one piece locks nowhere.'
	},
	runs: {
		name: 'Where a build coat runs off',
		marked: 'the thickest build coat runs off here',
		none: 'The thickest build coat stays everywhere.'
	},
	faults: {
		name: 'Faults of the mesh',
		marked: 'a fault of the mesh lies here',
		none: 'The mesh has no fault.'
	}
};
