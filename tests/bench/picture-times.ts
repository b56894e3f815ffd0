import type { Page } from '@playwright/test';

/** What happened first when, in ms of the page's clock. */
export interface PictureTimes {
	/** The worker was about to parse. */
	reading: number;
	/** The first section of the file was on the screen. */
	look: number;
	/** The worker had everything that the model in space is drawn from. */
	model: number;
	/** The model in space was on the screen. */
	space: number;
}

/** Lets a page note the times; to be called before it is opened. */
export async function notePictureTimes(page: Page): Promise<void> {
	// Runs in the page: it may use nothing of this file.
	await page.addInitScript(() => {
		const times: Record<string, number> = {};
		Object.assign(globalThis, { pictureTimes: times });
		const note = (what: string): void => {
			times[what] ??= performance.now();
		};
		/** The second frame after is the first that shows it for certain. */
		const noteOnScreen = (what: string): void => {
			requestAnimationFrame(() => requestAnimationFrame(() => note(what)));
		};
		const GivenWorker = Worker;
		globalThis.Worker = class extends GivenWorker {
			constructor(...given: ConstructorParameters<typeof Worker>) {
				super(...given);
				this.addEventListener('message', ({ data }: MessageEvent) => {
					if (/^Reading the triangles/.test(data.stage)) note('reading');
					if (data.kind === 'model') note('model');
				});
			}
		};
		new MutationObserver(() => {
			if (document.querySelector('[aria-labelledby="first-look-caption"]')) noteOnScreen('look');
		}).observe(document, { childList: true, subtree: true });
		const draw = WebGL2RenderingContext.prototype.drawElements;
		WebGL2RenderingContext.prototype.drawElements = function (...given) {
			draw.apply(this, given);
			noteOnScreen('space');
		};
	});
}

/** The times, once both pictures are there. */
export async function pictureTimes(page: Page, timeout: number): Promise<PictureTimes> {
	const found = await page.waitForFunction(
		() => {
			const times = Reflect.get(globalThis, 'pictureTimes') as Partial<PictureTimes>;
			return times.look && times.space ? times : null;
		},
		null,
		{ timeout }
	);
	return (await found.jsonValue()) as PictureTimes;
}
