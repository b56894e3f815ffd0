import type { CoatsPlan } from './coats-plan';
import type { Plan } from './plan';
import type { ShellPlan } from './shell-plan';
import { HANDS_S, MIN_S, overArea, wait, work, type Task } from './task';

export interface WorkFacts {
	/** Reading the briefings of this mold. */
	readS: number;
	people: number;
	exposedAreaCm2: number;
	coatedAreaCm2: number;
	release: Plan['release'];
	sealerDryS: number;
	coats: CoatsPlan;
	gloveCureS: number;
	shellRelease: Plan['shellRelease'];
	shell: ShellPlan;
	shellCureS: number;
	/** Melting what is poured molten, with somebody beside it; 0 for what is mixed. */
	meltS: number;
	/** From the first mixing of the pour to its last batch's being in; 0 when nobody can say. */
	pourS: number;
	/** At work on the pour. */
	pourPeople: number;
	castingS: number;
}

/** The whole job as pieces of work and waits, from briefing to handover. */
export function workList(facts: WorkFacts): Task[] {
	return [
		work('brief', 'brief', 'Brief the job, check the room', briefingS(facts)),
		work('pattern', 'pattern', 'Prepare the pattern and fix it to the board', HANDS_S.pattern),
		...sealing(facts),
		...releasing(facts),
		work('frame', 'frame', 'Fit the frame', HANDS_S.frame),
		work('frame', 'hold-readyToCoat', 'Hold point: ready to coat', HANDS_S.hold),
		...coating(facts),
		...backing(facts),
		work('shellCure', 'hold-readyToOpen', 'Hold point: ready to open', HANDS_S.hold),
		work(
			'open',
			'open',
			'Unscrew the board and wedge the frame up',
			HANDS_S.open,
			Math.min(2, facts.people)
		),
		work('mark', 'mark', 'Mark glove and shell on one side', HANDS_S.mark),
		work('peel', 'peel', 'Peel the glove off the pattern', HANDS_S.peel),
		work('wash', 'wash', 'Wash the glove', HANDS_S.wash),
		work('inspect', 'inspect', 'Inspect', HANDS_S.inspect),
		work('inspect', 'hold-moldAccepted', 'Hold point: mold accepted', HANDS_S.hold),
		...(facts.meltS > 0
			? [work('pour', 'pour-melt', 'Melt the wax, never alone', facts.meltS)]
			: []),
		work('pour', 'pour', 'First pour', HANDS_S.pour + facts.pourS, facts.pourPeople),
		wait(
			'pour',
			'pour-wait',
			facts.meltS > 0 ? 'The casting cools until it is solid through' : 'The casting sets',
			facts.castingS
		),
		work('pour', 'pour-release', 'Take the first part out', HANDS_S.release),
		work('handover', 'handover', 'Hand over the mold and its record', HANDS_S.handover)
	];
}

/** Five minutes; choice of the plan. A calendar promises no odd minute. */
const GRID_S = 5 * MIN_S;

/** Never less than it takes to read what has to be read. */
const briefingS = ({ readS }: WorkFacts): number =>
	Math.max(HANDS_S.brief, Math.ceil(readS / GRID_S) * GRID_S);

function sealing({ release, sealerDryS, exposedAreaCm2 }: WorkFacts): Task[] {
	if (release.sealerG === 0) return [];
	return Array.from({ length: release.sealerCoats ?? 0 }, (_, i) => i + 1).flatMap((coat) => [
		work(
			'pattern',
			`seal-${coat}`,
			`Seal the pattern, coat ${coat}`,
			overArea(HANDS_S.sealPerM2, exposedAreaCm2)
		),
		wait('pattern', `seal-${coat}-dry`, 'Sealer dries', sealerDryS)
	]);
}

function releasing({ release, coatedAreaCm2 }: WorkFacts): Task[] {
	const wax = Array.from({ length: release.waxCoats }, (_, i) => [
		work(
			'release',
			`wax-${i + 1}`,
			`Wax, coat ${i + 1}`,
			overArea(HANDS_S.waxPerM2, coatedAreaCm2)
		),
		wait('release', `wax-${i + 1}-haze`, 'Wax hazes, then buff', release.waxHazeS)
	]);
	const film = Array.from({ length: release.filmPasses }, (_, i) => [
		work(
			'release',
			`film-${i + 1}`,
			`Parting film, pass ${i + 1}`,
			overArea(HANDS_S.filmPerM2, coatedAreaCm2)
		),
		wait('release', `film-${i + 1}-dry`, 'Film dries', release.filmDryS)
	]);
	return [...wax, ...film].flat();
}

function coating({ coats, people, gloveCureS }: WorkFacts): Task[] {
	const tasks = coats.coats.flatMap((coat, i): Task[] => {
		const phase = coat.kind;
		const laid = work(
			phase,
			`coat-${i + 1}`,
			coat.title,
			HANDS_S.setUp + (coats.paceS[i] ?? 0),
			people
		);
		const tackTitle = 'Almost tack-free: test';
		// It runs from the first cup, not from the end of laying; one that shuts before the test is warned of elsewhere.
		const closesS = Math.max(coat.tackTestS, coat.windowClosesS - (coats.paceS[i] ?? 0));
		if (coat.brushBackS === null) {
			return [laid, wait(phase, `coat-${i + 1}-tack`, tackTitle, coat.tackTestS, closesS)];
		}
		const spentS = coat.brushBackS + HANDS_S.brushBack;
		return [
			laid,
			wait(
				phase,
				`coat-${i + 1}-gel`,
				'Thickens until it holds on the wall',
				coat.brushBackS,
				coat.brushBackS + HANDS_S.brushBack
			),
			work(phase, `coat-${i + 1}-back`, `${coat.title}: brush back`, HANDS_S.brushBack),
			wait(
				phase,
				`coat-${i + 1}-tack`,
				tackTitle,
				Math.max(0, coat.tackTestS - spentS),
				Math.max(0, closesS - spentS)
			)
		];
	});
	const tackS = coats.coats.at(-1)?.tackTestS ?? 0;
	return [
		...tasks,
		work('build', 'thickness', 'Measure the thickness', HANDS_S.thickness),
		wait(
			'gloveCure',
			'gloveCure',
			'Glove cures',
			Math.max(0, gloveCureS - tackS - HANDS_S.thickness)
		)
	];
}

function backing(facts: WorkFacts): Task[] {
	const { shellRelease, release, coatedAreaCm2, shell, people, shellCureS } = facts;
	const wax = Array.from({ length: shellRelease.waxCoats }, (_, i) => [
		work(
			'shellRelease',
			`back-wax-${i + 1}`,
			`Wax the back of the glove, coat ${i + 1}`,
			overArea(HANDS_S.waxPerM2, coatedAreaCm2)
		),
		wait(
			'shellRelease',
			`back-wax-${i + 1}-haze`,
			'Wax hazes',
			Math.max(release.waxHazeS, 10 * MIN_S)
		)
	]).flat();
	const rounds = shell.rounds.flatMap((round, i): Task[] => {
		const laid = work(
			'shell',
			`round-${i + 1}`,
			round.title,
			HANDS_S.setUp + (shell.paceS[i] ?? 0),
			people
		);
		// A fresh round goes on as soon as the last cup has stiffened.
		return i === shell.rounds.length - 1
			? [laid]
			: [
					laid,
					wait(
						'shell',
						`round-${i + 1}-gel`,
						'The round stiffens',
						shell.stiffS[i] ?? round.workingS,
						round.windowClosesS
					)
				];
	});
	return [
		work('trim', 'trim', 'Free, trim and clean', HANDS_S.trim),
		...wax,
		work('shellRelease', 'refit', 'Refit the frame', HANDS_S.refit),
		work('shellRelease', 'hold-readyForShell', 'Hold point: ready for the shell', HANDS_S.hold),
		...rounds,
		wait('shellCure', 'shellCure', 'Shell cures', shellCureS)
	];
}
