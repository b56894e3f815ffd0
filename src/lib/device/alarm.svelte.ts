/** Two tones that carry over an extraction fan; common practice, no source. */
const TONES_HZ = [880, 660];
const TONE_S = 0.35;
const ROUNDS = 3;

/**
 * The bench's alarm: sound, vibration and a flash of the screen. A browser lets a page make noise only
 * after a touch, so it is switched on by hand, once on each opening of the page.
 */
export class Alarm {
	/** Whether it was asked for. */
	isOn = $state(false);
	/** What it calls for, while it rings. */
	ringing = $state<string | null>(null);
	#audio: AudioContext | undefined;
	#timer: ReturnType<typeof setTimeout> | undefined;

	/** Call from a touch: opens the sound and says so with one short tone. */
	async turnOn(): Promise<void> {
		// On even where no sound comes: it still flashes and shakes.
		this.isOn = true;
		this.#audio ??= new AudioContext();
		await this.#audio.resume();
		this.#tone(TONES_HZ[0] ?? 880, 0, 0.12);
	}

	/** Rings for what is due; the words stay on the screen till `quiet`. */
	ring(words: string): void {
		this.ringing = words;
		clearTimeout(this.#timer);
		this.#timer = setTimeout(() => this.quiet(), 60_000);
		if (!this.isOn) return;
		navigator.vibrate?.([400, 200, 400, 200, 800]);
		for (let round = 0; round < ROUNDS; round += 1) {
			TONES_HZ.forEach((hz, i) => this.#tone(hz, round * 1.2 + i * TONE_S, TONE_S));
		}
	}

	quiet(): void {
		clearTimeout(this.#timer);
		this.ringing = null;
	}

	#tone(hz: number, afterS: number, lengthS: number): void {
		if (!this.#audio) return;
		const at = this.#audio.currentTime + afterS;
		const gain = this.#audio.createGain();
		const tone = this.#audio.createOscillator();
		tone.frequency.value = hz;
		// Ramps, so that it does not click.
		gain.gain.setValueAtTime(0, at);
		gain.gain.linearRampToValueAtTime(0.4, at + 0.02);
		gain.gain.linearRampToValueAtTime(0, at + lengthS);
		tone.connect(gain).connect(this.#audio.destination);
		tone.start(at);
		tone.stop(at + lengthS);
	}
}
