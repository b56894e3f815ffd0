import { sealerCoatsOf } from '../sealing';
import { after, is, rules } from './rule';

/** Sealer, wax and film: so many coats, each with its wait. */
export const RELEASE = rules({
	takesSealer: {
		holds: (c) => sealerCoatsOf(c) > 0,
		says: () => 'the plan seals nothing here: the pattern is dense, or sealed already'
	},
	sealerDry: after(
		(c) => c.waitSinceAt,
		(c) => c.plan.release.sealerDryS ?? 0,
		'the sealer is not dry: check it'
	),
	waxHazed: after(
		(c) => c.waitSinceAt,
		(c) => c.plan.release.waxHazeS,
		'the wax has not hazed: buff'
	),
	filmDry: after(
		(c) => c.waitSinceAt,
		(c) => c.plan.release.filmDryS,
		'the film is not dry: check it'
	),
	moreWax: {
		holds: (c) => c.waxCoats < c.plan.release.waxCoats,
		says: (c) => `all ${c.plan.release.waxCoats} coats of wax are on`
	},
	moreFilm: {
		holds: (c) => c.filmPasses < c.plan.release.filmPasses,
		says: (c) => `all ${c.plan.release.filmPasses} passes of film are on`
	},
	fullWaxCoats: {
		holds: (c, e) => is(e, 'glove.waxed') && e.coats >= c.plan.shellRelease.waxCoats,
		says: (c) => `the back of the glove takes ${c.plan.shellRelease.waxCoats} coats of wax`
	}
});
