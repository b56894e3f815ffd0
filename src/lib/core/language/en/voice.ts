/** What a voice says beyond the words on the screen, and how it reads units. */
export const voice = {
	/** A unit as it stands on the screen, for one of it and for any other number. */
	units: {
		mm: ['millimeter', 'millimeters'],
		'cm²': ['square centimeter', 'square centimeters'],
		in: ['inch', 'inches'],
		ft: ['foot', 'feet'],
		mL: ['milliliter', 'milliliters'],
		L: ['liter', 'liters'],
		'fl oz': ['fluid ounce', 'fluid ounces'],
		gal: ['gallon', 'gallons'],
		g: ['gram', 'grams'],
		kg: ['kilogram', 'kilograms'],
		oz: ['ounce', 'ounces'],
		lb: ['pound', 'pounds'],
		'°C': ['degree Celsius', 'degrees Celsius'],
		'°F': ['degree Fahrenheit', 'degrees Fahrenheit'],
		s: ['second', 'seconds'],
		min: ['minute', 'minutes'],
		h: ['hour', 'hours'],
		d: ['day', 'days'],
		'%': ['percent', 'percent']
	},
	takeCare: (what: string) => `Take care: ${what}`,
	testIn: ({ label, time }: { label: string; time: string }) => `${label}: test in ${time}`,
	itIsTime: (label: string) => `${label}: it is time`,
	left: ({ label, time }: { label: string; time: string }) => `${label}: ${time} left`,
	over: (label: string) => `${label}: over`
};
export type VoiceWords = typeof voice;
