import { expect, type Locator, type Page } from '@playwright/test';
import type { App } from './app';
import { answerTo, CAREFUL, type Answers } from './bench-answers';
import { seenFields } from './bench-fields';
import type { Somebody } from './demo-shop';
import { press, type Hand } from './press';

const MOST_ACTS = 400;

/** A person at the bench of one mold, who knows only what the screen says. */
export class Crew {
	/** Every heading worked under, in order, without repeats in a row. */
	readonly titles: string[] = [];
	hand: Hand = 'keys';
	#hears = false;

	constructor(
		readonly page: Page,
		readonly app: App,
		readonly person: Somebody
	) {}

	/** Signs in at the page that asks for it, and stays where it leads. */
	async signIn(): Promise<void> {
		const { page, person } = this;
		await page.getByRole('radio', { name: person.name }).check();
		await page.getByLabel('PIN', { exact: true }).fill(person.pin);
		await page.getByRole('button', { name: 'Sign in' }).click();
		await page.waitForURL((url) => !url.pathname.startsWith('/sign-in'));
	}

	/** Opens a page, signing in on the way when the session has run out. */
	async open(path: string): Promise<void> {
		await this.page.goto(`${this.app.url}${path}`);
		if (new URL(this.page.url()).pathname === '/sign-in') await this.signIn();
	}

	/** Opens the bench of a mold and waits till it listens, so that its script runs. */
	async openBench(jobId: string): Promise<void> {
		await this.#hearAlarms();
		const listening = this.#listening();
		await this.open(`/jobs/${jobId}/bench`);
		await listening;
	}

	/** An alarm fills the screen until somebody says that they are there. */
	async #hearAlarms(): Promise<void> {
		if (this.#hears) return;
		this.#hears = true;
		const button = this.page.getByRole('button', { name: 'I am here' });
		await this.page.addLocatorHandler(button, () => button.click());
	}

	#listening(): Promise<unknown> {
		return this.page.waitForRequest((request) => request.url().endsWith('/live'));
	}

	get title(): Locator {
		return this.page.getByRole('heading', { level: 1 });
	}

	/** The form of the act in the middle of the screen; those in closed panels are not in view. */
	get form(): Locator {
		return this.page.locator('main form').filter({ visible: true }).first();
	}

	/** The number of the last entry this page has seen; null when the job has ended. */
	seenSeq(): Promise<number | null> {
		return this.page.evaluate(() => {
			const seq = document.querySelector<HTMLInputElement>('main input[name="seq"]');
			return seq ? Number(seq.value) : null;
		});
	}

	/** Types what a careful hand would into every entry in view; `own` answers come first. */
	async fill(own: Answers = [], form = this.form): Promise<void> {
		const what = await this.page.locator('main').innerText();
		for (const field of await seenFields(form)) {
			const { kind, label, group, value, isOptional } = field;
			if (kind === 'checkbox') {
				await form.getByRole('checkbox', { name: label, exact: true }).check();
				continue;
			}
			const answer = answerTo(field, what, [...own, ...CAREFUL]);
			if (kind === 'radio') {
				if (answer === label) await form.getByRole('radio', { name: label, exact: true }).check();
				else if (answer === undefined) throw new Error(`no answer to "${group}", "${label}"`);
			} else if (answer !== undefined) {
				const within = group ? form.getByRole('group', { name: group, exact: true }) : form;
				await within.getByLabel(label, { exact: !isOptional }).fill(answer);
			} else if (!isOptional && value === '') {
				throw new Error(`no answer to "${label}"`);
			}
		}
	}

	/** Presses the button of a form and waits till the bench has taken the act, and shows what is next. */
	async send(form = this.form, isSure = false): Promise<void> {
		const before = await this.seenSeq();
		const button = form.getByRole('button').filter({ visible: true }).last();
		const answer = this.page.waitForResponse((response) => {
			const { search } = new URL(response.url());
			return response.request().method() === 'POST' && search.startsWith('?/act');
		});
		await press(button, () => answer, this.hand);
		const { type } = (await (await answer).json()) as { type: string };
		// Asked once: the hands of a test are quicker than a stick in a cup.
		if (type === 'failure' && !isSure) {
			await expect(this.page.getByRole('alert').first()).toBeVisible();
			const anyway = form.getByRole('button', { name: /^Enter it all the same/ });
			if (await anyway.isVisible()) return this.send(form, true);
		}
		if (type !== 'success') {
			await expect(this.page.getByRole('alert').first()).toBeVisible();
			const said = await this.page.getByRole('alert').allInnerTexts();
			throw new Error(`the bench refused: ${said.join(' ')}`);
		}
		await expect.poll(() => this.seenSeq(), { intervals: [20, 50] }).not.toBe(before);
	}

	/** When the screen says "wait", lets the time pass: on the shop's clock, not on ours. */
	async waitAsAsked(): Promise<void> {
		const until = this.page.getByRole('region', { name: 'Until when' });
		if (!(await until.isVisible())) return;
		// One look: a second later the words and the digits may say something else.
		const digits = /^\s*Wait\b[^:]*?((?:\d+:)?\d+:\d\d)/.exec(await until.innerText())?.[1];
		if (digits) await this.pass(secondsOf(digits) + 2);
	}

	/** Lets time pass in the shop, away from the page: a clock that leaps would end its session in the middle of a request. */
	async pass(seconds: number): Promise<void> {
		const url = this.page.url();
		await this.page.goto('about:blank');
		await this.app.advanceClock(seconds);
		const listening = this.#listening();
		await this.page.goto(url);
		if (new URL(this.page.url()).pathname === '/sign-in') await this.signIn();
		await listening;
	}

	/** Does the one act in the middle of the screen, after waiting as the screen asks. */
	async act(own: Answers = []): Promise<void> {
		await this.waitAsAsked();
		const title = await this.title.innerText();
		if (this.titles.at(-1) !== title) this.titles.push(title);
		if (await this.briefings.isVisible()) await this.readBriefing();
		await this.fill(own);
		await this.send();
	}

	/** Opens the first briefing that is not read, and reads it to its end: its button is not there before. */
	async readBriefing(): Promise<void> {
		const { page } = this;
		await page
			.locator('main details:not([open]) > summary')
			.filter({ visible: true })
			.first()
			.click();
		const end = page.getByText('The end', { exact: true }).filter({ visible: true });
		await expect(end).toBeVisible();
		await expect(this.form.getByRole('button', { name: /have read it/ })).toBeHidden();
		await end.evaluate((line) => line.scrollIntoView({ block: 'center' }));
		await expect(this.form.getByRole('button', { name: /have read it/ })).toBeVisible();
	}

	get briefings(): Locator {
		return this.page.getByRole('heading', { name: /briefings to read/ });
	}

	/** Works on until the heading reads `title`; stops before the first act under it. */
	async workUntil(title: RegExp, own: Answers = []): Promise<void> {
		for (let acts = 0; acts < MOST_ACTS; acts++) {
			if (title.test(await this.title.innerText())) return;
			await this.act(own);
		}
		throw new Error(`after ${MOST_ACTS} acts there was no ${title}: ${this.titles.join(' > ')}`);
	}
}

/** "1:02:09" or "42:10" in seconds. */
function secondsOf(digits: string): number {
	const parts = digits.trim().split(':').map(Number);
	if (parts.some(Number.isNaN)) throw new Error(`no time to wait in "${digits}"`);
	return parts.reduce((total, part) => total * 60 + part, 0);
}
