import type { Language } from '../../core/language';
import type { SensingElement, TechnologyReason } from './technology-types';
import type { OutputMode } from '../fields';

/** One sentence: the number asked, what is usual, its mark, and what would bring the kind back. */
export declare const technologySentence: (
  kind: SensingElement | OutputMode,
  reason: TechnologyReason,
  language?: Language,
) => string;
