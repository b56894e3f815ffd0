import { defineConfig, devices } from '@playwright/test';

export default defineConfig({
	testDir: 'e2e',
	outputDir: '../test-results',
	workers: 2,
	retries: 0,
	timeout: 120_000,
	expect: { timeout: 10_000 },
	reporter: 'list',
	use: {
		...devices['Desktop Chrome'],
		actionTimeout: 30_000,
		navigationTimeout: 30_000,
		// Only the tests of working without the server want one: it takes the whole app along.
		serviceWorkers: 'block',
		locale: 'en-US',
		timezoneId: 'America/Chicago',
		// Pictures and snapshots of every act would take more time than the acts themselves.
		trace: { mode: 'retain-on-failure', screenshots: false, snapshots: false },
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
