import { markedIn, type InLanguages, type Language } from '../core/language';
import { fromSi, UNITS } from '../core/units';
import { dateText } from '../plan/json-date';
import type { Channel } from '../plan/model';
import { dueOf, ownPiece } from '../plan/pieces';
import { fieldTitle } from '../plan/words/titles';
import type { DetailLine } from './plan-view';

interface PieceLineWords {
  readonly byCertificate: string;
  readonly latest: string;
  readonly otherType: (serial: string, type: string) => string;
}
const WORDS: InLanguages<PieceLineWords> = {
  en: { byCertificate: 'Sensitivity by its certificate', latest: 'Calibration due, latest piece', otherType: (serial, type) => `${serial}, listed as ${type}` }, // prettier-ignore
  de: { byCertificate: 'Empfindlichkeit laut Zertifikat', latest: 'Kalibrierung fällig, spätestes Stück', otherType: (serial, type) => `${serial}, in der Liste ein ${type}` }, // prettier-ignore
  fr: { byCertificate: 'Sensibilité d’après son certificat', latest: 'Étalonnage dû, exemplaire le plus tardif', otherType: (serial, type) => `${serial}, dans la liste un ${type}` }, // prettier-ignore
};
const DIGITS = 4;

/** Which piece a row names, when it is due and what its certificate says; empty where nothing of it is known. */
export const pieceLines = (channel: Channel, language: Language): readonly DetailLine[] => {
  const words = WORDS[language];
  const { serial, piece, calibrationDue, sensor } = channel;
  const own = ownPiece(channel);
  const due = dueOf(channel);
  const isTypes = calibrationDue === undefined && !own && sensor?.pieces !== undefined;
  const [key, unit] = own?.sensitivity === undefined ? (['chargeSensitivity', 'pC/g'] as const) : (['sensitivity', 'mV/g'] as const); // prettier-ignore
  const certified = own?.[key];
  const shown = serial !== undefined && piece && sensor && !own ? words.otherType(serial, piece.type) : serial;
  return [
    ...(shown === undefined ? [] : [{ label: fieldTitle('channels', 'serial', language), value: shown, unit: '' }]),
    ...(due === undefined ? [] : [{ label: isTypes ? words.latest : fieldTitle('channels', 'calibrationDue', language), value: dateText(due), unit: '' }]), // prettier-ignore
    ...(certified === undefined
      ? []
      : [{ label: words.byCertificate, value: markedIn(String(Number(fromSi(certified, unit).toPrecision(DIGITS))), language), unit: UNITS[unit].label }]), // prettier-ignore
  ];
};
