const KEY = 'glovewright-voice';

/**
 * Instructions spoken aloud by the browser's own voice, for hands that are busy: off until somebody turns it on, and
 * remembered on this device. Where a browser has no voice, `isHere` stays false and nothing is offered.
 */
export class Voice {
	isHere = $state(false);
	isOn = $state(false);

	/** Looks what this browser can do and what was chosen; call once the page is awake. */
	wake(): void {
		this.isHere = 'speechSynthesis' in window;
		try {
			this.isOn = this.isHere && localStorage.getItem(KEY) === 'on';
		} catch {
			// Storage may be closed to us; then it is chosen anew on each page.
		}
	}

	turn(isOn: boolean): void {
		this.isOn = isOn;
		if (!isOn) this.stop();
		try {
			localStorage.setItem(KEY, isOn ? 'on' : 'off');
		} catch {
			// As above: it lasts as long as the page.
		}
	}

	/** Says it if it was asked for, in place of what is being said. */
	say(words: string): void {
		if (!this.isOn) return;
		this.stop();
		const said = new SpeechSynthesisUtterance(words);
		said.lang = document.documentElement.lang || 'en';
		said.rate = 0.95;
		speechSynthesis.speak(said);
	}

	stop(): void {
		if (this.isHere) speechSynthesis.cancel();
	}
}
