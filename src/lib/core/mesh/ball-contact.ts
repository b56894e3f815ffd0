import type { Vec3 } from './mesh';
import type { SurfaceDistance } from './surface-distance';
import { cross, dot, lengthOf, scaled, subtract, unitOf } from './vector';

/** A ball that fits counts as touching when it sinks in by less than this part of its radius. */
const TOUCH_FRACTION = 0.02;
const MOST_STEPS = 24;
/** Steps of a quick roll and of a careful one end at this part of the radius. */
export const QUICK = 0.05;
export const CAREFUL = 0.01;

/**
 * Where the center of a ball of the reach's radius comes to lie when it is rolled over a surface as near
 * to a point as it gets.
 */
export class RollingBall {
	readonly #surface: SurfaceDistance;
	readonly radius: number;
	x = 0;
	y = 0;
	z = 0;

	constructor(surface: SurfaceDistance, radius: number) {
		this.#surface = surface;
		this.radius = radius;
	}

	/** Whether the ball, put onto a surface point along its normal, fits there without sinking in. */
	fitsAt(x: number, y: number, z: number, nx: number, ny: number, nz: number): boolean {
		this.x = x + this.radius * nx;
		this.y = y + this.radius * ny;
		this.z = z + this.radius * nz;
		return this.#surface.at(this.x, this.y, this.z) >= this.radius * (1 - TOUCH_FRACTION);
	}

	/**
	 * Tips the ball over a surface point from where it fits, with the normal given first, toward the
	 * second one, until it would sink in: over the lip of a recess as far as the other lip lets it.
	 */
	tipAt(point: Vec3, from: Vec3, toward: Vec3): void {
		let [fits, sinks] = [0, 1];
		for (let round = 0; round < 7; round += 1) {
			const part = round === 0 ? 1 : (fits + sinks) / 2;
			if (this.fitsAt(...point, ...between(from, toward, part))) fits = part;
			else sinks = part;
			if (fits === 1) break;
		}
		this.fitsAt(...point, ...between(from, toward, fits));
	}

	/** Gap between the ball where it is and a point; negative when the point is inside. */
	gapTo([px, py, pz]: Vec3): number {
		return Math.hypot(px - this.x, py - this.y, pz - this.z) - this.radius;
	}

	/**
	 * Rolls from where it is toward a point, pushed off the surface after each step; where it stops is in
	 * the fields.
	 *
	 * @returns the gap between the ball and the point
	 */
	rollTo(point: Vec3, least: number): number {
		let from: Vec3 = [this.x, this.y, this.z];
		let gap = this.gapTo(point);
		let step = this.radius / 2;
		this.#contacts = [];
		this.#touch(this.#surface.at(...from));
		for (let i = 0; i < MOST_STEPS && step > least * this.radius && gap > 0; i += 1) {
			const slide = slideAlong(unitOf(subtract(point, from)), this.#contacts);
			const length = lengthOf(slide);
			// In a straight trough this is the way to the nearest place in one go.
			const way = Math.min(step, length * (gap + this.radius));
			if (way < least * this.radius) break;
			[this.x, this.y, this.z] = sum(from, scaled(slide, way / length));
			const before = this.#contacts;
			this.#contacts = [];
			const isOut = this.#pushOut();
			const left = this.gapTo(point);
			if (isOut && left < gap - 1e-4 * way) {
				[from, gap] = [[this.x, this.y, this.z], left];
				step = Math.min(this.radius / 2, step * 1.6);
			} else {
				// What pushed back stands in the way of the next try as well.
				this.#contacts = distinct([...this.#contacts, ...before]);
				step /= 2;
			}
		}
		[this.x, this.y, this.z] = from;
		return gap;
	}

	/** Several walls push in turn; a few rounds settle between two or three of them. */
	#pushOut(): boolean {
		const surface = this.#surface;
		for (let round = 0; round < 6; round += 1) {
			const short = this.radius - this.#touch(surface.at(this.x, this.y, this.z));
			if (short <= 5e-3 * this.radius) return true;
			this.x += surface.dirX * short;
			this.y += surface.dirY * short;
			this.z += surface.dirZ * short;
		}
		return false;
	}

	/** Remembers the direction of the wall asked for last when the ball lies against it. */
	#touch(distance: number): number {
		const { dirX, dirY, dirZ } = this.#surface;
		if (distance < this.radius * (1 + TOUCH_FRACTION)) {
			this.#contacts = distinct([...this.#contacts, [dirX, dirY, dirZ]]);
		}
		return distance;
	}

	#contacts: Vec3[] = [];
}

/** The first two directions that differ by more than some 15°. */
function distinct(directions: readonly Vec3[]): Vec3[] {
	const [first, ...others] = directions;
	if (!first) return [];
	const second = others.find((other) => dot(first, other) < 0.96);
	return second ? [first, second] : [first];
}

/** What is left of a direction when walls stop its part against them. */
function slideAlong(wish: Vec3, [first, second]: readonly Vec3[]): Vec3 {
	const free = without(wish, first);
	if (!first || !second || dot(free, second) >= 0) return free;
	const other = without(wish, second);
	if (dot(other, first) >= 0) return other;
	const along = unitOf(cross(first, second));
	return scaled(along, dot(wish, along));
}

function without(wish: Vec3, wall: Vec3 | undefined): Vec3 {
	const into = wall ? dot(wish, wall) : 0;
	return wall && into < 0 ? subtract(wish, scaled(wall, into)) : wish;
}

function sum(a: Vec3, b: Vec3): Vec3 {
	return [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
}

function between(a: Vec3, b: Vec3, part: number): Vec3 {
	return unitOf(sum(a, scaled(subtract(b, a), part)));
}
