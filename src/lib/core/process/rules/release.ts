import { isSince } from '../context';
import { sealerCoatsOf } from '../sealing';
import { after, is, rules } from './rule';

/** Sealer, wax and film: so many coats, each with its wait. */
export const RELEASE = rules({
	takesSealer: {
		holds: (c) => sealerCoatsOf(c) > 0,
		says: (_c, _e, { rules: said }) => said.sealsNothing
	},
	sealerDry: after(
		(c) => c.waitSinceAt,
		(c) => c.plan.release.sealerDryS ?? 0,
		(said) => said.sealerWet
	),
	waxHazed: after(
		(c) => c.waitSinceAt,
		(c) => c.plan.release.waxHazeS,
		(said) => said.waxFresh
	),
	filmDry: after(
		(c) => c.waitSinceAt,
		(c) => c.plan.release.filmDryS,
		(said) => said.filmWet
	),
	moreWax: {
		holds: (c) => c.waxCoats < c.plan.release.waxCoats,
		says: (c, _e, { rules: said }) => said.waxDone(c.plan.release.waxCoats)
	},
	moreFilm: {
		holds: (c) => c.filmPasses < c.plan.release.filmPasses,
		says: (c, _e, { rules: said }) => said.filmDone(c.plan.release.filmPasses)
	},
	/** Where the plan releases pattern and board, the inside of the frame is too; asked from version 6 on. */
	frameReleased: {
		holds: (c, e) =>
			!isSince(c, 6) ||
			!c.plan.release.needed ||
			(is(e, 'frame.fitted') && e.insideReleased === true),
		says: (_c, _e, { rules: said }) => said.frameReleased
	},
	fullWaxCoats: {
		holds: (c, e) => is(e, 'glove.waxed') && e.coats >= c.plan.shellRelease.waxCoats,
		says: (c, _e, { rules: said }) => said.backTakes(c.plan.shellRelease.waxCoats)
	}
});
