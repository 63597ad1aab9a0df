import type { Translations } from '../wording';

export const thermal: Translations = {};
