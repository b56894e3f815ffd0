/** What the bench asks once before it enters what will be noted as a deviation. */
export const questions = {
	mixerNotInDate: (state: string) =>
		`Of whoever mixes, ${state}. Not mixed yet? Then let somebody mix it whose training is in date. Mixed already? Enter it, so that the record has it: the cup is laid as usual, that person handles no more of it, and it is noted as a deviation that a supervisor decides`,
	mixerUnknown:
		'This device does not know whether the training of whoever mixes is in date. Not mixed yet? Then let somebody mix it of whom you know it. Mixed already? Enter it: the server looks, and notes a deviation where it was not',
	roomRead: (faults: string) =>
		`Read right? ${faults} Entered now, it stands as a deviation beside the plan`,
	largeCup: (given: {
		massG: number;
		plannedG: number;
		mostG: number;
		workingMin: number;
		peakC: number | null;
	}) =>
		`Is so much in one cup? It is ${given.massG} g; the plan has ${given.plannedG} g, and one person lays ${given.mostG} g at most before it turns. Was the scale at zero with the empty cup on it? If it is in there, share it out now, part by part, before it is mixed. Mixed as one it works for ${given.workingMin} min${given.peakC === null ? '' : ` and, forgotten, may reach about ${given.peakC} °C`}, and is noted as a deviation`,
	mixedFast: ({ tookS, mixS }: { tookS: number; mixS: number }) =>
		`Mixed already? It was weighed ${tookS} s ago, and the data sheet asks for ${mixS} s of mixing. A streak is a patch that stays sticky: mix on. Entered now, it is noted as a deviation`,
	laidLate: ({ lateMin, closesAt }: { lateMin: number; closesAt: string }) =>
		`Is it really on the mold? Its time was over ${lateMin} min ago, at ${closesAt}. Past it a cup no longer wets and bonds: set it aside. Laid all the same, it is a deviation that a supervisor decides`,
	testedEarly: ({
		title,
		tookMin,
		expectedMin
	}: {
		title: string;
		tookMin: number;
		expectedMin: number;
	}) =>
		`So soon? ${title} was laid ${tookMin} min ago; the data sheet lets expect about ${expectedMin} min. Press a clean fingertip at another place, where it lies thickest. Entered now, it is noted as a deviation`,
	testedTooSoon: ({ title, tookMin, fromAt }: { title: string; tookMin: number; fromAt: string }) =>
		`So soon? ${title} was laid ${tookMin} min ago, and no test counts before ${fromAt}: what takes a print now may still be wet beneath. Wait, then press again. Entered now, it lets no coat on, and is noted as a deviation`
};
export type QuestionWords = typeof questions;
