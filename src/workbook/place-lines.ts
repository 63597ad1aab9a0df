import { markedIn, type InLanguages, type Language } from '../core/language';
import { directionVector } from '../plan/local-axes';
import type { Channel } from '../plan/model';
import { degreeOfFreedom } from '../plan/point';
import type { DetailLine } from './plan-view';

const WORDS: InLanguages<{ readonly dof: string; readonly along: string }> = {
  en: { dof: 'Degree of freedom', along: 'Direction in the article’s X, Y, Z' },
  de: { dof: 'Freiheitsgrad', along: 'Richtung in X, Y, Z des Prüflings' },
  fr: { dof: 'Degré de liberté', along: 'Direction en X, Y, Z du spécimen' },
};
const PLACES = 3;

/** Where a channel measures, in one form whatever was typed; with local axes also as direction cosines. */
export const placeLines = (channel: Channel, language: Language): readonly DetailLine[] => {
  const dof = degreeOfFreedom(channel);
  const vector = channel.localAxes === undefined ? undefined : directionVector(channel);
  const cosine = (value: number): string => markedIn((Number(value.toFixed(PLACES)) || 0).toFixed(PLACES), language);
  return [
    ...(dof === undefined ? [] : [{ label: WORDS[language].dof, value: dof, unit: '' }]),
    ...(vector ? [{ label: WORDS[language].along, value: vector.map(cosine).join('; '), unit: '' }] : []),
  ];
};
