import { defineConfig, devices } from '@playwright/test';

export default defineConfig({
	testDir: 'e2e',
	// Whole journeys take minutes each and are run by `npm run journeys`.
	testMatch: process.env.JOURNEYS ? '**/*.journey.ts' : '**/*.test.ts',
	outputDir: '../test-results',
	workers: 2,
	retries: 0,
	timeout: 120_000,
	expect: { timeout: 10_000 },
	reporter: 'list',
	use: {
		...devices['Desktop Chrome'],
		locale: 'en-US',
		timezoneId: 'America/Chicago',
		trace: 'retain-on-failure',
		launchOptions: {
			executablePath: process.env.CHROMIUM_PATH ?? '/usr/bin/chromium',
			args: [
				'--no-sandbox',
				'--disable-gpu',
				'--disable-quic',
				'--no-first-run',
				'--disable-background-networking',
				'--disable-component-update',
				'--disable-sync'
			]
		}
	}
});
