import { pino, type DestinationStream, type Logger } from 'pino';

const LEVELS = ['trace', 'debug', 'info', 'warn', 'error', 'fatal', 'silent'];

/** Names whose values never reach a log, wherever an object may carry them. */
export const SECRETS: readonly string[] = [
	'pin',
	'newPin',
	'pinAgain',
	'ownPin',
	'password',
	'cookie',
	'token',
	'pin_hash'
];

/**
 * A log of one JSON object a line. What a request carried is not in it: no body, no query, no cookie.
 *
 * @param destination - where lines go; standard output when left out
 */
export function makeLog(
	destination?: DestinationStream,
	level = process.env.GLOVEWRIGHT_LOG
): Logger {
	const options = {
		level: level && LEVELS.includes(level) ? level : 'info',
		base: null,
		timestamp: () => `,"time":"${new Date().toISOString()}"`,
		formatters: { level: (label: string) => ({ level: label }) },
		redact: { paths: SECRETS.flatMap((name) => [name, `*.${name}`]), censor: '[kept out]' },
		serializers: { err: plainError }
	};
	return destination ? pino(options, destination) : pino(options);
}

/** The server's log. GLOVEWRIGHT_LOG sets its level; "silent" turns it off. */
export const log = makeLog();

/** What an error says of itself. Its other members are left out: drivers put rows and parameters there. */
function plainError(error: unknown): object {
	if (!(error instanceof Error)) return { message: typeof error };
	const { name, message, stack } = error;
	const code = 'code' in error ? String(error.code) : undefined;
	return { type: name, message, ...(code ? { code } : {}), stack };
}
