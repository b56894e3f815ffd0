import type { Mesh } from '../mesh';
import { carvedBracket } from './carved-bracket';
import { reliefTile } from './relief-tile';
import { steppedPulley } from './stepped-pulley';

export interface DemoPattern {
	id: 'relief-tile' | 'stepped-pulley' | 'carved-bracket';
	name: string;
	/** Built anew at each call: closed, millimeters, lying on the board. */
	mesh: () => Mesh;
}

/** Invented patterns, so that everything can be tried without a file. */
export const DEMO_PATTERNS: readonly DemoPattern[] = [
	{ id: 'relief-tile', name: 'Relief tile (invented)', mesh: reliefTile },
	{ id: 'stepped-pulley', name: 'Stepped pulley (invented)', mesh: steppedPulley },
	{ id: 'carved-bracket', name: 'Carved bracket (invented)', mesh: carvedBracket }
];
