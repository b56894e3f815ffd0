/** What the bench asks once before it enters what will be noted as a deviation. */
export const questions = {
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
		`So soon? ${title} was laid ${tookMin} min ago; the data sheet lets expect about ${expectedMin} min. Press a clean fingertip at another place, where it lies thickest. Entered now, it is noted as a deviation`
};
export type QuestionWords = typeof questions;
