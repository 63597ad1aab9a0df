import type { Translations } from '../wording';

export const frequency: Translations = {};
