import type { Language } from '../../core/language';
import type { EnvelopeBound } from './envelope-bound';

/** Number first, then what causes it, then what an actual sensor has to spare. */
export declare const envelopeSentence: (bound: EnvelopeBound, language?: Language) => string;
