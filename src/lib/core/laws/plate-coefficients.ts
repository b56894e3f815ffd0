import type { Law } from '../quantity/figure';

export type PlateSupport = 'simple' | 'clamped';
export type PlateLoad = 'uniform' | 'rising along the short side' | 'rising along the long side';

export interface PlateRow {
	/** Short side / long side; 0 is the endless strip. */
	x: number;
	alpha: number;
	beta: number;
}

export const plateTableLaw: Law = {
	id: 'plate-table',
	name: 'Coefficients of thin rectangular plates',
	formula: 'w = α · q · a⁴ / D, M = β · q · a², greatest values anywhere on the plate',
	source:
		"Tabulated here: simply supported by Navier's double series (Timoshenko & Woinowsky-Krieger 1959, Theory of Plates and Shells, art. 29-30), clamped by the Ritz method; strips by beam theory",
	validity: "Poisson's ratio 0.3; α and β to four digits, 1% between rows."
};

// Each row: long side / short side, alpha, beta.
const table = (rows: [number, number, number][]): readonly PlateRow[] =>
	rows.map(([ratio, alpha, beta]) => ({ x: 1 / ratio, alpha, beta }));

/**
 * Greatest deflection and greatest moment, `a` being the short side and `q` the uniform pressure
 * or the pressure at the foot. A load that rises along the long side has no strip as its limit, so
 * its rows end at 5.
 */
export const PLATE_TABLES: Readonly<
	Record<PlateSupport, Readonly<Record<PlateLoad, readonly PlateRow[]>>>
> = {
	simple: {
		uniform: table([
			[1, 0.004062, 0.04789],
			[1.1, 0.004869, 0.05548],
			[1.2, 0.005651, 0.06268],
			[1.4, 0.007085, 0.07555],
			[1.6, 0.008308, 0.08623],
			[1.8, 0.009316, 0.09485],
			[2, 0.01013, 0.1017],
			[2.5, 0.0115, 0.1129],
			[3, 0.01223, 0.1189],
			[4, 0.01282, 0.1235],
			[5, 0.01297, 0.1246],
			[Infinity, 0.01302, 0.125]
		]),
		'rising along the short side': table([
			[1, 0.002054, 0.02699],
			[1.1, 0.002456, 0.03064],
			[1.2, 0.002846, 0.03409],
			[1.4, 0.003561, 0.04027],
			[1.6, 0.004171, 0.04541],
			[1.8, 0.004674, 0.04956],
			[2, 0.005079, 0.05286],
			[2.5, 0.005761, 0.0583],
			[3, 0.006129, 0.06117],
			[4, 0.006421, 0.0634],
			[5, 0.006497, 0.06397],
			[Infinity, 0.006522, 0.06415]
		]),
		'rising along the long side': table([
			[1, 0.002054, 0.02699],
			[1.1, 0.00247, 0.02857],
			[1.2, 0.002877, 0.03243],
			[1.4, 0.003643, 0.03956],
			[1.6, 0.004325, 0.04582],
			[1.8, 0.004922, 0.05125],
			[2, 0.005443, 0.05598],
			[2.5, 0.006481, 0.06537],
			[3, 0.007253, 0.07235],
			[4, 0.008324, 0.08205],
			[5, 0.009037, 0.08852]
		])
	},
	clamped: {
		uniform: table([
			[1, 0.001265, 0.05133],
			[1.1, 0.001508, 0.05808],
			[1.2, 0.001725, 0.06388],
			[1.4, 0.002068, 0.07257],
			[1.6, 0.0023, 0.078],
			[1.8, 0.002446, 0.08115],
			[2, 0.002533, 0.08282],
			[2.5, 0.002612, 0.08393],
			[3, 0.002617, 0.08383],
			[Infinity, 0.002604, 0.08333]
		]),
		'rising along the short side': table([
			[1, 0.0006432, 0.03343],
			[1.1, 0.0007638, 0.03703],
			[1.2, 0.0008715, 0.04007],
			[1.4, 0.001042, 0.04455],
			[1.6, 0.001157, 0.04732],
			[1.8, 0.00123, 0.04891],
			[2, 0.001273, 0.04974],
			[2.5, 0.001312, 0.05029],
			[3, 0.001315, 0.05025],
			[Infinity, 0.001309, 0.05]
		]),
		'rising along the long side': table([
			[1, 0.0006432, 0.03343],
			[1.1, 0.0007707, 0.03597],
			[1.2, 0.0008877, 0.038],
			[1.4, 0.001085, 0.04097],
			[1.6, 0.001238, 0.04373],
			[1.8, 0.001359, 0.04712],
			[2, 0.001457, 0.04991],
			[2.5, 0.001641, 0.05527],
			[3, 0.001772, 0.05917],
			[4, 0.001948, 0.0643],
			[5, 0.002062, 0.06749]
		])
	}
};
