import type { QuestionWords } from '../en/questions';

export const questions: QuestionWords = {
	mixerNotInDate: (state) =>
		`De quien mezcla: ${state}. ¿Aún no está mezclado? Que lo mezcle alguien con la formación vigente. ¿Ya está mezclado? Anótelo, para que conste: el vaso se aplica como siempre, esa persona no toca más material, y consta como desviación que decide un supervisor`,
	mixerUnknown:
		'Este dispositivo no sabe si la formación de quien mezcla está vigente. ¿Aún no está mezclado? Que lo mezcle alguien de quien usted lo sepa. ¿Ya está mezclado? Anótelo: el servidor lo comprueba, y anota una desviación si no lo estaba',
	roomRead: (faults) =>
		`¿Leído bien? ${faults} Anotado ahora, consta como desviación junto al plan`,
	largeCup: ({ massG, plannedG, mostG, workingMin, peakC }) =>
		`¿Tanto hay en un solo vaso? Son ${massG} g; el plan tiene ${plannedG} g, y una persona aplica como mucho ${mostG} g antes de que se pase. ¿Estaba la balanza a cero con el vaso vacío encima? Si de verdad está dentro, repártalo ahora, parte por parte, antes de mezclarlo. Mezclado de una vez aguanta ${workingMin} min${peakC === null ? '' : ` y, olvidado, puede llegar a unos ${peakC} °C`}, y consta como desviación`,
	mixedFast: ({ tookS, mixS }) =>
		`¿Ya está mezclado? Se pesó hace ${tookS} s, y la ficha técnica pide ${mixS} s de mezcla. Una veta es una zona que se queda pegajosa: siga mezclando. Anotado ahora, consta como desviación`,
	laidLate: ({ lateMin, closesAt }) =>
		`¿De verdad está en el molde? Su tiempo se acabó hace ${lateMin} min, a las ${closesAt}. Pasado ese tiempo, un vaso ya no moja ni se une: apártelo. Si se aplicó de todos modos, es una desviación que decide un supervisor`,
	testedEarly: ({ title, tookMin, expectedMin }) =>
		`¿Tan pronto? ${title} se aplicó hace ${tookMin} min; según la ficha técnica se esperan unos ${expectedMin} min. Apriete un dedo limpio en otro lugar, donde esté más gruesa. Anotado ahora, consta como desviación`,
	testedTooSoon: ({ title, tookMin, fromAt }) =>
		`¿Tan pronto? ${title} se aplicó hace ${tookMin} min, y ninguna prueba cuenta antes de ${fromAt}: lo que ahora toma huella puede estar húmedo debajo. Espere, y apriete otra vez. Anotado ahora, no deja aplicar ninguna capa, y consta como desviación`
};
