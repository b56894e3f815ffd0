import type { ShopDay } from '$lib/core/process/ahead/shop-days';

/** How wide an hour is drawn against the others: what is near and manned is drawn large. */
const WIDTH_OF_HOUR = { ahead: 3, behind: 0.5, otherDays: 1.3, unmanned: 0.22 };
/** The present day's share of the width, also when little of its shift is left. */
const TODAY_AT_LEAST = 0.26;

interface Piece {
	fromMs: number;
	toMs: number;
	/** In percent of the width. */
	from: number;
	to: number;
	isShift: boolean;
}

/** The days drawn side by side: an hour of the present day's shift is wide, a night narrow, none is left out. */
export class DayAxis {
	readonly pieces: readonly Piece[];
	readonly fromMs: number;
	readonly toMs: number;

	constructor(days: readonly ShopDay[], nowMs: number) {
		const [today = [], ...others] = days.map((day, index) =>
			piecesOf(day, index === 0 ? nowMs : null)
		);
		const rest = others.flat();
		const least = (widthOf(rest) * TODAY_AT_LEAST) / (1 - TODAY_AT_LEAST);
		const grow = Math.max(1, least / widthOf(today));
		const raw = [...today.map((piece) => ({ ...piece, width: piece.width * grow })), ...rest];
		const whole = widthOf(raw);
		let at = 0;
		this.pieces = raw.map(({ width, ...piece }) => {
			const from = at;
			at += (width / whole) * 100;
			return { ...piece, from, to: at };
		});
		this.fromMs = this.pieces[0]?.fromMs ?? nowMs;
		this.toMs = this.pieces.at(-1)?.toMs ?? nowMs;
	}

	/** Place of an instant in percent of the width, within 0 and 100. */
	at(ms: number): number {
		const piece = this.pieces.find(({ toMs }) => ms < toMs);
		if (!piece) return 100;
		const part = (ms - piece.fromMs) / (piece.toMs - piece.fromMs);
		return piece.from + Math.max(0, part) * (piece.to - piece.from);
	}
}

function widthOf(pieces: ReadonlyArray<{ width: number }>): number {
	return pieces.reduce((sum, { width }) => sum + width, 0);
}

function piecesOf(day: ShopDay, nowMs: number | null) {
	const isToday = nowMs !== null;
	const edges = [
		...new Set([
			day.fromMs,
			...day.shifts.flatMap(({ fromMs, toMs }) => [fromMs, toMs]),
			...(isToday ? [Math.min(Math.max(nowMs, day.fromMs), day.toMs)] : []),
			day.toMs
		])
	].sort((a, b) => a - b);
	return edges.slice(1).map((toMs, index) => {
		const fromMs = edges[index] ?? day.fromMs;
		const isShift = day.shifts.some((shift) => fromMs >= shift.fromMs && toMs <= shift.toMs);
		const perHour = !isShift
			? WIDTH_OF_HOUR.unmanned
			: !isToday
				? WIDTH_OF_HOUR.otherDays
				: fromMs < nowMs
					? WIDTH_OF_HOUR.behind
					: WIDTH_OF_HOUR.ahead;
		return { fromMs, toMs, isShift, width: (perHour * (toMs - fromMs)) / 3_600_000 };
	});
}
