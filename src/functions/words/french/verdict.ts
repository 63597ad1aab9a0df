import type { Translations } from '../wording';

export const verdict: Translations = {};
