import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';

const script = fileURLToPath(new URL('../../scripts/serve.mjs', import.meta.url));

export interface ServerOptions {
	port: number;
	dataDir: string;
	clockFile: string;
	/** More of its environment. */
	env?: Record<string, string>;
}

/** The built app in a process of its own, on this machine only. */
export class ServerProcess {
	readonly url: string;
	readonly #options: ServerOptions;
	#child: ChildProcess | null = null;
	/** Everything it has said since it was started last. */
	said = '';

	constructor(options: ServerOptions) {
		this.#options = options;
		this.url = `http://localhost:${options.port}`;
	}

	/** Starts it and waits till it answers. @throws Error with what it said when it does not start */
	async start(): Promise<void> {
		const { port, dataDir, clockFile, env } = this.#options;
		const child = spawn(process.execPath, [script], {
			env: {
				...process.env,
				// A test sends more in a second than a bench in an hour.
				GLOVEWRIGHT_RATE_FACTOR: '1000',
				GLOVEWRIGHT_BACKUPS: 'off',
				PORT: String(port),
				HOST: 'localhost',
				GLOVEWRIGHT_DATA: dataDir,
				GLOVEWRIGHT_CLOCK_OFFSET_FILE: clockFile,
				...env
			},
			stdio: ['ignore', 'pipe', 'pipe']
		});
		this.#child = child;
		this.said = '';
		await new Promise<void>((resolve, reject) => {
			const hear = (chunk: Buffer) => {
				this.said += chunk;
				if (this.said.includes('is running at')) resolve();
			};
			child.stdout.on('data', hear);
			child.stderr.on('data', hear);
			child.once('exit', (code) =>
				reject(new Error(`the server ended with ${code}: ${this.said}`))
			);
		});
	}

	/** Ends it with a signal and waits till it is gone. */
	async end(signal: 'SIGTERM' | 'SIGKILL'): Promise<void> {
		const child = this.#child;
		this.#child = null;
		if (!child || child.exitCode !== null || child.signalCode !== null) return;
		child.kill(signal);
		await once(child, 'exit');
	}
}
