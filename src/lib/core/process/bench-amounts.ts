import { ENGLISH } from '../language/words';
import type { ProcessContext } from './context';
import { cupAdditions } from './cup-additions';
import { nextCup } from './next-cup';
import type { Amount } from './step';

/** What to have at hand in a state: the parts of the cup, the wax of a coat, the parts of the pour. */
export function amountsAt(path: string, c: ProcessContext, w = ENGLISH): Amount[] {
	const said = w.steps.amounts;
	if (path.endsWith('.weighing') || path.endsWith('.weighed')) {
		const next = nextCup(c);
		return (next?.cup.parts ?? []).map(({ part, massG }) => ({ label: part, massG }));
	}
	if (path === 'coating.mixed' || path === 'shell.mixed') {
		return [{ label: said.inCup, massG: sum(c.cup?.massesG ?? {}) }];
	}
	if (path === 'pour.pouring') {
		const { parts, batches } = c.plan.pour;
		const isSplit = batches && batches.count > 1;
		const added = cupAdditions(c.plan, 'casting', isSplit ? batches.massG : c.plan.pour.massG);
		const each = [...(isSplit ? batches.parts : parts)].map(({ part, massG }) => ({
			label: part,
			massG
		}));
		return [...each, ...added.map(({ name, massG }) => ({ label: name, massG }))].map((amount) =>
			isSplit ? { ...amount, label: said.eachBatch(amount.label) } : amount
		);
	}
	if (path === 'sealing.brushing') {
		const { sealerG, sealerCoats = 1 } = c.plan.release;
		return [{ label: said.sealer, massG: sealerG / Math.max(1, sealerCoats) }];
	}
	if (path === 'release.waxing') {
		return [{ label: said.wax, massG: c.plan.release.waxG / Math.max(1, c.plan.release.waxCoats) }];
	}
	if (path === 'release.filming') {
		return [
			{
				label: said.film,
				massG: c.plan.release.filmG / Math.max(1, c.plan.release.filmPasses)
			}
		];
	}
	return [];
}

function sum(massesG: Record<string, number>): number {
	return Object.values(massesG).reduce((total, massG) => total + massG, 0);
}
