import { Agent, request } from 'node:http';

/** Posts JSON over lines that stay open, with as little work of its own as can be: the server is timed, not this. */
export class KeepAlive {
	readonly #agent: Agent;
	readonly #url: string;
	readonly #cookie: string;

	constructor(url: string, cookie: string, lines: number) {
		this.#agent = new Agent({ keepAlive: true, maxSockets: lines });
		this.#url = url;
		this.#cookie = cookie;
	}

	/** @throws Error for any answer but 200 and 201 */
	async post(path: string, body: object): Promise<string> {
		const text = JSON.stringify(body);
		return new Promise((resolve, reject) => {
			const asked = request(
				`${this.#url}${path}`,
				{
					agent: this.#agent,
					method: 'POST',
					headers: {
						'content-type': 'application/json',
						'content-length': Buffer.byteLength(text),
						cookie: this.#cookie
					}
				},
				(answer) => {
					let said = '';
					answer.setEncoding('utf8');
					answer.on('data', (chunk: string) => (said += chunk));
					answer.on('error', reject);
					answer.on('end', () => {
						const { statusCode = 0 } = answer;
						if (statusCode === 200 || statusCode === 201) resolve(said);
						else reject(new Error(`${path} answered ${statusCode}: ${said.slice(0, 500)}`));
					});
				}
			);
			asked.on('error', reject);
			asked.end(text);
		});
	}

	/** Opens a stream and reads on till the returned function is called; which says how much came. */
	async follow(path: string): Promise<() => number> {
		return new Promise((resolve, reject) => {
			const asked = request(
				`${this.#url}${path}`,
				{ agent: false, headers: { cookie: this.#cookie } },
				(answer) => {
					let bytes = 0;
					answer.on('data', (chunk: Buffer) => (bytes += chunk.length));
					answer.on('error', () => {});
					resolve(() => {
						answer.destroy();
						return bytes;
					});
				}
			);
			asked.on('error', reject);
			asked.end();
		});
	}

	end(): void {
		this.#agent.destroy();
	}
}
