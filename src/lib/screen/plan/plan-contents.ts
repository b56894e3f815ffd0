import type { Plan } from '$lib/core/plan/plan';

const GROUPS = [
	{
		title: 'Make it',
		parts: [
			['section', 'Section'],
			['phases', 'Phase by phase'],
			['bridging', 'Places that trap air'],
			['calendar', 'Calendar'],
			['order', 'Order list'],
			['weighing', 'Scale and ratio'],
			['additions', 'Additions'],
			['plaster', 'Plaster for a pour']
		]
	},
	{
		title: 'Nobody hurt',
		parts: [
			['people', 'People and protection'],
			['air', 'Air of the room'],
			['room', 'Dew and damp'],
			['cure', 'Heat of cup and coat'],
			['lifting', 'Turning and lifting']
		]
	},
	{
		title: 'Will it hold',
		parts: [
			['walls', 'Coats on the walls'],
			['handling', 'Coming off the pattern'],
			['forces', 'Frame and shell under load'],
			['sizes', 'Size of the part']
		]
	},
	{
		title: 'What it takes',
		parts: [
			['cost', 'Cost'],
			['choice', 'Glove, block or poured layer'],
			['weights', 'Weights'],
			['waste', 'Waste']
		]
	}
] as const;

export type PartId = (typeof GROUPS)[number]['parts'][number][0];

/** Present in every plan; the rest came later and stands only where the plan has it. */
const ALWAYS: readonly PartId[] = [
	'section',
	'phases',
	'calendar',
	'order',
	'people',
	'cost',
	'choice',
	'weights'
];
/** Read by few and seldom, so folded on a small screen. */
const RARE: readonly PartId[] = [
	'weighing',
	'walls',
	'forces',
	'sizes',
	'choice',
	'weights',
	'waste'
];

export interface PlanPart {
	id: PartId;
	/** "B2": letter of the group and number within it, as sheets of a set of drawings are named. */
	mark: string;
	title: string;
	isRare: boolean;
}

export interface PlanGroup {
	letter: string;
	title: string;
	parts: PlanPart[];
}

/** The parts of a plan in the order they are read: what to do, what can hurt, what holds, what it takes. */
export function planContents(plan: Plan): PlanGroup[] {
	const sections: Record<string, unknown> = plan;
	return GROUPS.map(({ title, parts }, g) => {
		const letter = 'ABCD'.charAt(g);
		const present = parts.filter(([id]) => ALWAYS.includes(id) || sections[id] !== undefined);
		return {
			letter,
			title,
			parts: present.map(([id, name], i) => ({
				id,
				mark: `${letter}${i + 1}`,
				title: name,
				isRare: RARE.includes(id)
			}))
		};
	});
}
