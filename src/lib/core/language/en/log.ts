/** What an entry of the log says beyond its label. */
export const log = {
	room: ({
		temperatureC,
		humidityPct,
		extractionOn
	}: {
		temperatureC: number;
		humidityPct: number;
		extractionOn: boolean;
	}) => `${temperatureC} °C, ${humidityPct}%, extraction ${extractionOn ? 'on' : 'off'}`,
	planDecided: (reason: string) => `its plan let through by a supervisor: ${reason}`,
	backTo: ({ phase, reason }: { phase: string; reason: string }) => `Back to ${phase}: ${reason}`,
	points: ({ n, thinnestMm }: { n: number; thinnestMm: number }) =>
		`${n} places, thinnest ${thinnestMm} mm`,
	gap: (mm: number) => `gap ${mm} mm`,
	keys: (keys: string) => `keys: ${keys}`,
	accepted: 'Accepted',
	notYet: 'Not yet',
	results: {
		wet: 'wet',
		'almost tack-free': 'almost tack-free',
		hard: 'hard',
		soft: 'soft',
		cured: 'cured',
		good: 'good',
		bad: 'bad',
		faulty: 'faulty'
	},
	tests: { 'test cup': 'test cup', 'test patch': 'test patch' },
	verdicts: { sound: 'sound', 'needs repair': 'in need of repair', reject: 'not usable' },
	flaws: { voids: 'voids', bubbles: 'bubbles', tears: 'tears', thinSpots: 'thin spots' },
	size: ({
		name,
		measuredMm,
		plannedMm
	}: {
		name: string;
		measuredMm: number;
		plannedMm: number;
	}) => `${name} ${measuredMm} mm, planned ${plannedMm} mm`
};
export type LogWords = typeof log;
